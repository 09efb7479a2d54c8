import { mmPerInch } from '../quantity/units.js';

/** Slots narrower than this are not punched: `4x22` is rather four holes of 22 mm. */
const narrowestSlotMm = 9;
const widestSlotMm = 2 * mmPerInch;
/** Holes up to this size are punched in numbers, for bolts to M33. */
const greatestCountedMm = 36;

/**
 * Whether two bare numbers, the first a whole one, may be a count and a size as well as a slot: `12x18` is twelve
 * holes Ø18 or a slot 12 × 18, but `22x50` is no count of holes. Common practice, no source.
 * @param input.first the first number as written; widthMm, lengthMm: both as sizes, in the order written
 */
export function mayBeCount(input: { first: number; widthMm: number; lengthMm: number }): boolean {
  const { first, widthMm, lengthMm } = input;
  if (!Number.isInteger(first) || first < 2 || first > 999) return false;
  const isSlot = widthMm < lengthMm && widthMm >= narrowestSlotMm && widthMm < widestSlotMm;
  return !isSlot || lengthMm <= greatestCountedMm;
}
