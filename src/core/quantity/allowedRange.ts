import { formatLength } from './formatLength.js';
import type { LengthKind } from './lengthKind.js';
import type { LengthUnit } from './units.js';

const roundDigits = 2;

/**
 * What a dimension can be, as a refusal says it: in inches as it is, in mm within it to two digits, `1.6 to 300 mm`,
 * so that every size that is shown is allowed.
 */
export function allowedRange(kind: Omit<LengthKind, 'fractionProne'>, unit: LengthUnit): string {
  const { leastMm, greatestMm } = kind;
  const [least, greatest] =
    unit === 'in' ? [leastMm, greatestMm] : [rounded(leastMm, Math.ceil), rounded(greatestMm, Math.floor)];
  return `Allowed: ${formatLength(least, unit)} to ${formatLength(greatest, unit)} ${unit}.`;
}

function rounded(mm: number, round: (value: number) => number): number {
  const step = 10 ** (Math.floor(Math.log10(mm)) + 1 - roundDigits);
  return round(mm / step) * step;
}
