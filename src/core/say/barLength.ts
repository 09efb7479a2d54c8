import { feetInchText } from '../quantity/feetInch.js';
import { formatLength } from '../quantity/formatLength.js';
import { type LengthUnit, mmPerFoot } from '../quantity/units.js';

/** Shorter pieces are told in inches: `31-1/2"`, and `4'-2"` from here on. Common practice, no source. */
const leastInFeetMm = 3 * mmPerFoot;
const finestDenominator = 64;

/** The length of a bar, a piece or a cut as the shop says it, never rounded to a coarser mark: `4'-2 1/32"`, `31-1/2"`, `1240.5 mm`. */
export function barLength(lengthMm: number, unit: LengthUnit): string {
  const plain = formatLength(lengthMm, unit);
  if (unit === 'mm') return `${plain} mm`;
  const isFraction = !plain.includes('.');
  return isFraction && lengthMm >= leastInFeetMm
    ? feetInchText({ lengthMm, denominator: finestDenominator })
    : `${plain}"`;
}
