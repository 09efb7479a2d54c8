import { type LengthUnit, mmPerInch } from './units.js';

const finestDenominator = 64;
const fractionToleranceInch = 0.0005;
const wholeMmTolerance = 0.005;
/** A size that stands on a step but for rounding stays there. */
const roundingShare = 1e-9;

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

/** Steps in which tools are made. Common practice, no source. */
const sizeStepMm: Record<LengthUnit, number> = { in: mmPerInch / 32, mm: 0.5 };

/** The next size people of a unit work with, never smaller: a least size rounded up to 1/32 in or 0.5 mm. */
export function nextSizeMm(lengthMm: number, unit: LengthUnit): number {
  const step = sizeStepMm[unit];
  return Math.ceil((lengthMm / step) * (1 - roundingShare)) * step;
}

/** Sizes as they were most likely written, all in one unit: whole mm stay in mm where they are no inch fractions. */
export function formatSizes(sizesMm: readonly number[], unit: LengthUnit): string {
  const texts = sizesMm.map((size) => formatLength(size, unit));
  const wholeMm = sizesMm.every((size) => Math.abs(size - Math.round(size)) < wholeMmTolerance);
  const fractions = texts.every((text) => !text.includes('.'));
  if (unit === 'mm' || fractions || !wholeMm) return texts.join(' × ');
  return `${sizesMm.map((size) => Math.round(size)).join(' × ')} mm`;
}

/** The finest marks of a rule. Common practice, no source. */
const ruleMarkMm: Record<LengthUnit, number> = { in: mmPerInch / finestDenominator, mm: 0.5 };

/** A computed size as it is set by a rule: the nearest mark, `9/16` for 0.559 in. */
export function formatOnRule(lengthMm: number, unit: LengthUnit): string {
  const mark = ruleMarkMm[unit];
  return formatLength(Math.round(lengthMm / mark) * mark, unit);
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
