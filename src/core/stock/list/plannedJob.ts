import type { StockPlan } from '../stockPlan.js';
import { cutBars } from './cutBars.js';
import type { CutBar, JobMass, JobShortage, MarkShare, PlannedJob, Purchase } from './jobPlan.js';
import { isPriced } from './problemOf.js';
import type { JobStock, StockJob } from './stockJob.js';

/**
 * What a plan means for its job: what to buy, what to cut in which order, what is left and what each mark costs.
 *
 * Formula: cost of a mark = cost of the job · m · n / Σ m · n, m what a piece takes along its middle, n the pieces cut
 * @param job the job
 * @param plan a plan of its problem
 * @param pricePerKg of steel, where the Stock table gives no price; undefined where that is not known
 * @returns lengths in mm, masses in kg; bought = net + drops + scrap
 * Valid for a plan of this job. Throws nothing else.
 * @example plannedJob(job, planStock(problemOf(job, losses)), undefined).purchases
 * Source: common practice, no source.
 */
export function plannedJob(job: StockJob, plan: StockPlan, pricePerKg: number | undefined): PlannedJob {
  const bars = cutBars(job, plan);
  const priced = pricedBy(job, bars, pricePerKg);
  const purchases = purchasesOf(job, bars, priced === 'Material price' ? pricePerKg : undefined);
  const cost = priced === 'none' ? undefined : sum(purchases.map((each) => each.cost ?? 0));
  const mass = massOf(job, bars);
  const shortages = plan.shortages.flatMap(({ part: at, pieces, why }): JobShortage[] => {
    const part = job.parts[at];
    return part ? [{ part, pieces, why }] : [];
  });
  return {
    job,
    plan,
    purchases,
    bars,
    shortages,
    shares: sharesOf(job, bars, mass.boughtKg, cost),
    mass,
    ...(cost === undefined ? {} : { cost }),
    priced,
  };
}

function pricedBy(
  job: StockJob,
  bars: readonly CutBar[],
  pricePerKg: number | undefined,
): PlannedJob['priced'] {
  if (isPriced(job) || (bars.length > 0 && bars.every(({ stock }) => stock.price !== undefined)))
    return 'Stock';
  return pricePerKg === undefined ? 'none' : 'Material price';
}

function purchasesOf(
  { stocks, kgPerMm }: StockJob,
  bars: readonly CutBar[],
  pricePerKg: number | undefined,
): Purchase[] {
  return stocks.flatMap((stock) => {
    const count = sum(bars.filter((bar) => bar.stock === stock).map((bar) => bar.bars));
    if (count === 0) return [];
    const massKg = count * stock.lengthMm * kgPerMm;
    const cost = pricePerKg === undefined ? costOfBars(stock, count) : massKg * pricePerKg;
    return [{ stock, bars: count, massKg, ...(cost === undefined ? {} : { cost }) }];
  });
}

function costOfBars({ price }: JobStock, bars: number): number | undefined {
  return price === undefined ? undefined : price * bars;
}

function massOf({ kgPerMm }: StockJob, bars: readonly CutBar[]): JobMass {
  const lengthMm = (of: (bar: CutBar) => number) => sum(bars.map((bar) => bar.bars * of(bar)));
  const boughtKg = kgPerMm * lengthMm(({ stock }) => stock.lengthMm);
  const netKg = kgPerMm * lengthMm(({ pieces }) => sum(pieces.map(({ part }) => part.middleMm)));
  const dropsKg = kgPerMm * lengthMm(({ restMm, isKept }) => (isKept ? restMm : 0));
  return { boughtKg, netKg, dropsKg, scrapKg: Math.max(0, boughtKg - netKg - dropsKg) };
}

function sharesOf(
  { parts }: StockJob,
  bars: readonly CutBar[],
  boughtKg: number,
  cost: number | undefined,
): MarkShare[] {
  const pieces = new Map(parts.map((part) => [part, 0]));
  for (const bar of bars)
    for (const { part } of bar.pieces) pieces.set(part, (pieces.get(part) ?? 0) + bar.bars);
  const wholeMm = sum(parts.map((part) => part.middleMm * (pieces.get(part) ?? 0)));
  return parts.flatMap((part) => {
    const count = pieces.get(part) ?? 0;
    if (count === 0) return [];
    const share = (part.middleMm * count) / wholeMm;
    return [
      {
        part,
        pieces: count,
        share,
        boughtKg: share * boughtKg,
        ...(cost === undefined ? {} : { cost: share * cost }),
      },
    ];
  });
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
