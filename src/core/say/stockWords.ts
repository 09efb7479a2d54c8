import { formatNumber } from '../quantity/formatLength.js';
import { type LengthUnit, radianPerDegree } from '../quantity/units.js';
import type { StockPlan } from '../stock/stockPlan.js';
import type { StockPart } from '../stock/stockProblem.js';
import { barLength } from './barLength.js';

/** A part: its length, and of a mitered one the miters of both ends, below 0 with the long point away from the fence. */
export function stockPartWords(part: StockPart, unit: LengthUnit): string {
  const { lengthMm, leanLeftRad, leanRightRad } = part;
  const length = barLength(lengthMm, unit);
  if (leanLeftRad === 0 && leanRightRad === 0) return length;
  const degrees = [leanLeftRad, -leanRightRad].map((rad) => `${formatNumber(rad / radianPerDegree, 2)}°`);
  return `${length} (${degrees.join('/')})`;
}

/** How far a plan may be from the least, as a share of the least; 0 where it is proven. */
export function stockGap({ purchase, bound, proof }: StockPlan): number {
  if (proof !== undefined || purchase <= bound) return 0;
  return bound > 0 ? (purchase - bound) / bound : Number.POSITIVE_INFINITY;
}

/** A gap, never told smaller than it is: `0.4%`. */
export function gapPercent(gap: number): string {
  return `${Math.max(1, Math.ceil(gap * 1000 * (1 - 1e-9))) / 10}%`;
}

/** What is known of how good a plan is: `proven: no plan buys less`, `at most 0.4% above the least`. */
export function proofWords(plan: StockPlan): string {
  const gap = stockGap(plan);
  if (gap === 0) return 'proven: no plan buys less';
  return Number.isFinite(gap)
    ? `at most ${gapPercent(gap)} above the least`
    : 'how near the least is not known';
}

/** What a proof stands on where mitered cuts take something: the model counts a little more than cutting needs. */
export const miterCountWords =
  'Where a mitered cut meets no like cut, up to 0.4 of the kerf more is counted at 45°: proven means least as counted so.';

type Shortage = StockPlan['shortages'][number];

/** Why pieces find no bar; a clause. */
export function whyShort({ why }: Pick<Shortage, 'why'>): string {
  return {
    'too long': 'no bar that can be had is long enough',
    'not enough bars': 'not enough bars',
    'none found': 'no bar was found for it, another plan may cut it',
  }[why];
}

/** Pieces that find no bar: `4 × 25'-0" not cut: no bar that can be had is long enough`. */
export function shortageWords(shortage: Pick<Shortage, 'pieces' | 'why'>, name: string): string {
  return `${shortage.pieces.toLocaleString('en')} × ${name} not cut: ${whyShort(shortage)}`;
}
