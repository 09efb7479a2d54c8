import { formatLength } from '../quantity/formatLength.js';
import { feetInchText } from '../quantity/feetInch.js';
import { formatNumber } from '../quantity/formatLength.js';
import { type LengthUnit, mmPerFoot, radianPerDegree } from '../quantity/units.js';
import type { StockPlan } from '../stock/stockPlan.js';
import type { StockPart } from '../stock/stockProblem.js';

/** Shorter pieces are told in inches: `31-1/2"`, and `4'-2"` from here on. Common practice, no source. */
const leastInFeetMm = 3 * mmPerFoot;
const finestDenominator = 64;

/** The length of a bar or a piece as the shop says it: `4'-2"`, `31-1/2"`, `1250`. */
export function barLengthWords(lengthMm: number, unit: LengthUnit): string {
  const plain = formatLength(lengthMm, unit);
  if (unit === 'mm') return plain;
  const isFraction = !plain.includes('.');
  return isFraction && lengthMm >= leastInFeetMm
    ? feetInchText({ lengthMm, denominator: finestDenominator })
    : `${plain}"`;
}

/** A part: its length, and of a mitered one the miters of both ends, below 0 with the long point away from the fence. */
export function stockPartWords(part: StockPart, unit: LengthUnit): string {
  const { lengthMm, leanLeftRad, leanRightRad } = part;
  const length = barLengthWords(lengthMm, unit);
  if (leanLeftRad === 0 && leanRightRad === 0) return length;
  const degrees = [leanLeftRad, -leanRightRad].map((rad) => `${formatNumber(rad / radianPerDegree, 2)}°`);
  return `${length} (${degrees.join('/')})`;
}

/** How far a plan may be from the least, as a share of the least; 0 where it is proven. */
export function stockGap({ purchase, bound, proof }: StockPlan): number {
  if (proof !== undefined || purchase <= bound) return 0;
  return bound > 0 ? (purchase - bound) / bound : Number.POSITIVE_INFINITY;
}

/** What is known of how good a plan is: `proven: no plan buys less`, `at most 0.4 % above the least`. */
export function proofWords(plan: StockPlan): string {
  const gap = stockGap(plan);
  if (gap === 0) return 'proven: no plan buys less';
  // Never told smaller than it is.
  const tenths = Math.ceil(gap * 1000 * (1 - 1e-12));
  return Number.isFinite(gap)
    ? `at most ${tenths / 10} % above the least`
    : 'how near the least is not known';
}

/** Pieces that no bar is left for: `4 × 25'-0": longer than any bar that can be had`. */
export function shortageWords(
  { pieces, why }: StockPlan['shortages'][number],
  part: StockPart,
  unit: LengthUnit,
): string {
  const reasons = {
    'too long': 'no bar that can be had is long enough',
    'not enough bars': 'not enough bars',
    'none found': 'no bar was found for it, another plan may cut it',
  };
  return `${pieces} × ${stockPartWords(part, unit)} not cut: ${reasons[why]}`;
}
