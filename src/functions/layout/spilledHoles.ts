import type { Point } from '../../core/part/point.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { inShopUnit } from '../../core/quantity/shopUnit.js';
import type { LengthUnit } from '../../core/quantity/units.js';

/** Centers as they spill: x and y side by side, one hole in a row. */
export function spilledHoles(centers: readonly Point[], unit: LengthUnit): CellValue[][] {
  return centers.map(({ x, y }) => [inShopUnit(x, 'length', unit), inShopUnit(y, 'length', unit)]);
}

export const holesGiven =
  'x and y of each hole in in or mm, without a heading: x from the left end, y from the bottom edge';
