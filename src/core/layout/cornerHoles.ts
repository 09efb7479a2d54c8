import type { Point } from '../part/point.js';
import type { LengthUnit } from '../quantity/units.js';
import type { Working } from '../working/working.js';
import { gridHoles } from './gridHoles.js';

/**
 * The centers of four holes, one in each corner of a plate.
 *
 * Formula: x = e and L − e; y = s and W − s
 * @param plate length and width in mm; the distances from the ends and from the sides in mm; `unit` of sentences
 * @param working collects the steps when given
 * @returns centers in mm from the left end and the bottom edge: bottom left, bottom right, top left, top right
 * Valid while holes of both ends and of both sides stay apart; throws `invalid` where a distance reaches the middle.
 * @example cornerHoles({ lengthMm: 300, widthMm: 300, fromEndMm: 50, fromSideMm: 50, unit: 'mm' })[1] // { x: 250, y: 50 }
 * Source: common practice, no source.
 */
export function cornerHoles(
  plate: { lengthMm: number; widthMm: number; fromEndMm: number; fromSideMm: number; unit: LengthUnit },
  working?: Working,
): Point[] {
  return gridHoles({ ...plate, columns: 2, rows: 2 }, working);
}
