import { type LengthUnit, mmPerFoot } from '../../quantity/units.js';

/**
 * Lengths that bars commonly come in, in mm, offered where the Stock table has none. Invented: no list of a supplier.
 */
export const commonLengthsMm: Readonly<Record<LengthUnit, readonly number[]>> = {
  in: [20 * mmPerFoot, 40 * mmPerFoot],
  mm: [6000, 12000],
};
