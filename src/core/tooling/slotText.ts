import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';

/** From this width a slot written as two numbers could be read as a count of holes. */
const wordFromMm = 50;

/**
 * A slot as the trade writes it, readable as a hole again: `13/16x1-7/8`, `22x50`, `slot 2-1/8x5`.
 * @param slot width and length over all in mm
 * @returns text in the shop's unit, to 0.001 in or 0.01 mm where it is no fraction
 * Source: common practice, no source.
 */
export function slotText(slot: { widthMm: number; lengthMm: number }, unit: LengthUnit): string {
  const size = `${formatLength(slot.widthMm, unit)}x${formatLength(slot.lengthMm, unit)}`;
  return slot.widthMm >= wordFromMm ? `slot ${size}` : size;
}
