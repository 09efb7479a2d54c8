import { refuse } from '../inputError.js';
import type { StockLength, StockPart, StockProblem } from './stockProblem.js';

const longestMm = 1e7;
const mostPieces = 100_000;
const steepestRad = (85 * Math.PI) / 180;
const toleranceMm = 1e-6;

/**
 * Refuses a stock problem that cannot be planned, in one sentence.
 *
 * @param problem lengths in mm, angles in rad
 * @returns nothing
 * Valid for every problem.
 * Throws InputError for a list without parts or stock lengths, a length of 0 or below or over 10,000 m, pieces or bars
 * that are not whole, miters of more than 85° or that meet, a price of some lengths only, and a negative loss.
 * @example requireStockProblem({ ...problem, stocks: [] }) // throws: Stock lengths: none are given. …
 * Source: none; plain sense.
 */
export function requireStockProblem(problem: StockProblem): void {
  const { parts, stocks } = problem;
  if (parts.length === 0) refuse('Parts', 'none', 'none are given.', 'Give at least one part to cut.');
  if (stocks.length === 0)
    refuse('Stock lengths', 'none', 'none are given.', 'Give at least one length that bars come in.');
  requireLosses(problem);
  for (const part of parts) requirePart(part, problem.widthMm);
  const pieces = parts.reduce((sum, part) => sum + part.pieces, 0);
  if (pieces > mostPieces)
    refuse(
      'Pieces',
      String(pieces),
      `${String(pieces)} are too many for one plan.`,
      `Plan at most ${String(mostPieces)} pieces at once.`,
    );
  for (const stock of stocks) requireStock(stock);
  const priced = stocks.filter((stock) => stock.price !== undefined).length;
  if (priced > 0 && priced < stocks.length)
    refuse(
      'Price',
      `${String(priced)} of ${String(stocks.length)}`,
      `only ${String(priced)} of ${String(stocks.length)} stock lengths have one.`,
      'Give a price for each length, or for none to buy by length.',
    );
}

function requireLosses(problem: StockProblem): void {
  const losses = [
    ['Kerf', problem.kerfMm],
    ['End trim', problem.trimMm],
    ['Grip', problem.gripMm],
    ['Shortest drop to keep', problem.keepMm],
    ['Width', problem.widthMm],
  ] as const;
  for (const [name, value] of losses)
    if (!(value >= 0 && value <= longestMm))
      refuse(name, String(value), `${String(value)} mm is not possible.`, 'Give 0 or a length above it.');
}

function requirePart(part: StockPart, widthMm: number): void {
  requireLength('Length', part.lengthMm);
  requireWhole('Pieces', part.pieces, 1);
  for (const lean of [part.leanLeftRad, part.leanRightRad])
    if (!(Math.abs(lean) <= steepestRad))
      refuse('Miter', degrees(lean), `${degrees(lean)} from square is too steep.`, 'Give at most 85°.');
  const left = Math.tan(part.leanLeftRad);
  const right = Math.tan(part.leanRightRad);
  if ((left !== 0 || right !== 0) && widthMm === 0)
    refuse(
      'Width',
      '0',
      'it is 0, and parts are mitered.',
      'Give the width of the bar in the plane of the miters.',
    );
  // Above and below this, the two faces cross within the width.
  const leastMm = (widthMm / 2) * (Math.abs(left) + Math.abs(right) + Math.abs(left - right));
  if (part.lengthMm < leastMm - toleranceMm)
    refuse(
      'Miter',
      `${degrees(part.leanLeftRad)} and ${degrees(part.leanRightRad)}`,
      `the miters of a part ${String(part.lengthMm)} mm long meet.`,
      `Such miters need at least ${String(Math.ceil(leastMm))} mm.`,
    );
}

function requireStock(stock: StockLength): void {
  requireLength('Stock length', stock.lengthMm);
  if (stock.available !== undefined) requireWhole('Bars available', stock.available, 0);
  if (stock.price !== undefined && !(stock.price >= 0 && stock.price <= 1e12))
    refuse(
      'Price',
      String(stock.price),
      `${String(stock.price)} is not a price.`,
      'Give 0 or more, for one bar.',
    );
}

function requireLength(name: string, lengthMm: number): void {
  if (!(lengthMm > 0 && lengthMm <= longestMm))
    refuse(
      name,
      String(lengthMm),
      `${String(lengthMm)} mm is not possible.`,
      'Give a length above 0, and at most 10,000 m.',
    );
}

function requireWhole(name: string, value: number, least: number): void {
  if (!(Number.isSafeInteger(value) && value >= least))
    refuse(
      name,
      String(value),
      `${String(value)} is not a count.`,
      `Give a whole number from ${String(least)} up.`,
    );
}

function degrees(rad: number): string {
  return `${String(Number(((rad * 180) / Math.PI).toFixed(3)))}°`;
}
