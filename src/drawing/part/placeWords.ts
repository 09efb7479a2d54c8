import type { Point } from '../../core/part/point.js';
import { formatLength } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Fence } from './fence.js';

/** Where a place lies on the press: `2 in from the stop, 1-3/4 in from the heel at the fence`. */
export function placeWords(
  { side, edge }: Fence,
  widthMm: number,
  unit: LengthUnit,
): (point: Point) => string {
  const size = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
  return ({ x, y }) =>
    `${size(x)} from the stop, ${size(side === 'throat' ? widthMm - y : y)} from the ${edge} at the fence`;
}
