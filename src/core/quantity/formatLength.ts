import { type LengthUnit, mmPerInch } from './units.js';

const finestDenominator = 64;
const fractionToleranceInch = 0.0005;
const wholeMmTolerance = 0.005;

/** A number without needless zeros, at most `decimals` behind the point. */
export function formatNumber(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)));
}

/** A length as the trade writes it, without its unit: `1-3/16` in inches, `30` in mm. */
export function formatLength(lengthMm: number, unit: LengthUnit): string {
  if (unit === 'mm') return formatNumber(lengthMm, 2);
  const inches = lengthMm / mmPerInch;
  const parts = Math.round(inches * finestDenominator);
  if (parts === 0 || Math.abs(inches - parts / finestDenominator) > fractionToleranceInch) {
    return formatNumber(inches, 3);
  }
  return inchFraction(parts, finestDenominator);
}

/** A size as it was most likely written: a whole number of mm stays in mm where it is no inch fraction. */
export function formatSize(lengthMm: number, unit: LengthUnit): string {
  const text = formatLength(lengthMm, unit);
  const wholeMm = Math.abs(lengthMm - Math.round(lengthMm)) < wholeMmTolerance;
  return unit === 'in' && text.includes('.') && wholeMm ? `${Math.round(lengthMm)} mm` : text;
}

function inchFraction(parts: number, denominator: number): string {
  const whole = Math.trunc(parts / denominator);
  let over = parts - whole * denominator;
  let under = denominator;
  while (over !== 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  if (over === 0) return String(whole);
  return whole === 0 ? `${over}/${under}` : `${whole}-${over}/${under}`;
}
