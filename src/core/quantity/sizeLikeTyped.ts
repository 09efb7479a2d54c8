import { feetInchText } from './feetInch.js';
import { formatLength, formatSizes } from './formatLength.js';
import { unitTyped } from './sizeAsTyped.js';
import { type LengthUnit, mmPerFoot } from './units.js';

/**
 * A size in the form in which another one beside it is typed, so that the two are compared at a glance.
 * @param mm the size in mm, above zero
 * @param typed the other one, as it stands in the sheet
 * @param unit the unit of the shop, which a cell without a unit has
 * @returns text: feet and inches beside feet and inches, `6"` under a foot; else in the unit of the other one, which is told where it is not
 *   the shop's
 * @example sizeLikeTyped(6096, "24'-0", 'in') // "20'-0", not 240
 * Source: common practice, no source.
 */
export function sizeLikeTyped(mm: number, typed: string, unit: LengthUnit): string {
  const inFeet = feet.test(typed);
  if (inFeet && !formatLength(mm, 'in').includes('.')) {
    if (mm < mmPerFoot) return `${formatLength(mm, 'in')}"`;
    const text = feetInchText({ lengthMm: mm, denominator: finestDenominator });
    return /["”″]$/.test(typed.trim()) ? text : text.slice(0, -1);
  }
  const written = inFeet ? 'in' : (unitTyped(typed) ?? unit);
  return written === unit ? formatSizes([mm], unit) : `${formatLength(mm, written)} ${written}`;
}

const finestDenominator = 64;
const feet = /['’′]|\df(?:t|eet|oot)|\bf(?:t|eet|oot)/i;
