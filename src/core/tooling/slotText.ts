import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';
import { mayBeCount } from './countOrSlot.js';

/**
 * A slot as the trade writes it, readable as a hole again: `13/16x1-7/8`, `22x50`, `slot 18x22`. The word stands where
 * the first number could be a count of holes.
 * @param slot width and length over all in mm
 * @returns text in the shop's unit, to 0.001 in or 0.01 mm where it is no fraction
 * Source: common practice, no source.
 */
export function slotText(slot: { widthMm: number; lengthMm: number }, unit: LengthUnit): string {
  const width = formatLength(slot.widthMm, unit);
  const size = `${width}x${formatLength(slot.lengthMm, unit)}`;
  const mixed = unit === 'in' && /^(?:[2-9]|\d\d)-/.test(width);
  return mixed || mayBeCount({ ...slot, first: Number(width) }) ? `slot ${size}` : size;
}
