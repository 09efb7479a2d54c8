import type { StockProblem } from '../stockProblem.js';
import type { CuttingLosses, JobPart, Kerf, StockJob } from './stockJob.js';

/** Whether each length of a job has a price, so that its bars are bought by price. */
export function isPriced({ stocks }: Pick<StockJob, 'stocks'>): boolean {
  return stocks.length > 0 && stocks.every(({ price }) => price !== undefined);
}

/**
 * The pure problem of a job. Parts that are not nested are as long as their mitered cuts need between square ones; without
 * a shortest drop none is kept.
 */
export function problemOf(job: StockJob, { trimMm = 0, gripMm = 0, keepMm }: CuttingLosses): StockProblem {
  const { parts, stocks, widthMm, turning, kerf } = job;
  const byPrice = isPriced(job);
  return {
    parts: parts.map((part) => ({
      lengthMm: part.longMm + allowanceMm(part, 'left', kerf) + allowanceMm(part, 'right', kerf),
      pieces: part.pieces,
      leanLeftRad: part.leanLeftRad,
      leanRightRad: part.leanRightRad,
    })),
    stocks: stocks.map(({ lengthMm, price, available }) => ({
      lengthMm,
      ...(byPrice ? { price } : {}),
      ...(available === undefined ? {} : { available }),
    })),
    widthMm,
    turning,
    kerfMm: kerf.mm,
    trimMm,
    gripMm,
    keepMm: keepMm ?? Math.max(0, ...stocks.map(({ lengthMm }) => lengthMm)),
  };
}

/** What a mitered cut of a part that is not nested takes beyond a square one: k / cos θ − k. */
export function allowanceMm(
  { notNested, miterLeftRad, miterRightRad }: JobPart,
  end: 'left' | 'right',
  { mm }: Kerf,
): number {
  if (notNested === undefined) return 0;
  const rad = end === 'left' ? miterLeftRad : miterRightRad;
  return mm / Math.cos(rad) - mm;
}
