import type { Point } from '../../core/part/point.js';
import { sizeAsTyped, withUnit } from '../../core/quantity/sizeAsTyped.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Fence } from './fence.js';

/** Where a place lies on the press, in the unit of the cells it comes from: `2 in from the stop, 1-3/4 in from the heel at the fence`. */
export function placeWords(
  { side, edge }: Fence,
  widthMm: number,
  unit: LengthUnit,
): (point: Point, typed?: readonly (string | undefined)[]) => string {
  return ({ x, y }, typed = []) => {
    const size = (mm: number) => withUnit(sizeAsTyped(mm, typed, unit), unit);
    return `${size(x)} from the stop, ${size(side === 'throat' ? widthMm - y : y)} from the ${edge} at the fence`;
  };
}
