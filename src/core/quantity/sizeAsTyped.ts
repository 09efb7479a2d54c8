import { formatLength, formatSizes } from './formatLength.js';
import { type LengthUnit, mmPerInch } from './units.js';

/**
 * A size that cells of a row give, in the unit in which they are typed.
 * @param mm the size in mm
 * @param typed the cells it comes from, as they stand in the sheet
 * @param unit the unit of the shop, which cells without a unit have
 * @returns text: without its unit where that is the shop's; with it where a cell is typed in the other one and the size is
 *   round there
 * @example sizeAsTyped(50, ['50 mm'], 'in') // '50 mm', though it is 1-31/32 in but for a hair
 * Source: common practice, no source.
 */
export function sizeAsTyped(mm: number, typed: readonly (string | undefined)[], unit: LengthUnit): string {
  const other = unit === 'in' ? 'mm' : 'in';
  const isTyped = typed.some((text) => text !== undefined && unitOf[other].test(text));
  // A computed size is no one's cell: it is round in the other unit only where it was typed there.
  const parts = mm / finest[other];
  const isRound = Math.abs(parts - Math.round(parts)) < 1e-6;
  // A fraction of the shop's own may come from another cell: 1-1/2 is 38.1 mm, too.
  const sixteenths = (mm / mmPerInch) * 16;
  const isFraction = unit === 'in' && Math.abs(sixteenths - Math.round(sixteenths)) < 1e-6;
  if (!isTyped || !isRound || isFraction) return formatSizes([mm], unit);
  return `${formatLength(mm, other)} ${other}`;
}

/** A size as typed, always with its unit: `2 in`, `50 mm`, `20'-0`. */
export function withUnit(size: string, unit: LengthUnit): string {
  return /[a-z"]$|'/.test(size) ? size : `${size} ${unit}`;
}

/** The finest size that is typed, in mm: a tenth of a millimeter, a 64th of an inch. */
const finest: Record<LengthUnit, number> = { mm: 0.1, in: mmPerInch / 64 };

/** The unit that a cell ends with; undefined where it has none. */
export function unitTyped(text: string): LengthUnit | undefined {
  return (['mm', 'in'] as const).find((unit) => unitOf[unit].test(text));
}

/** The unit at the end of a cell. */
const unitOf: Record<LengthUnit, RegExp> = {
  mm: /[\d\s][mc]m$/i,
  in: /[\d\s](?:in|inch|inches|ft|feet|["”'])$/i,
};
