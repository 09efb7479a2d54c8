import { refuse } from '../inputError.js';
import type { Point } from '../part/point.js';
import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';
import { sameMm } from './samePosition.js';
import type { Plate } from './way.js';

/** A hole of a list, and the row it stands in. */
export interface ListedHole extends Point {
  row: number;
}

/** Refuses holes that are off the plate, and two at one place. */
export function requireHoles(holes: readonly ListedHole[], plate: Plate, unit: LengthUnit): void {
  const size = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
  const seen: ListedHole[] = [];
  for (const hole of holes) {
    const { x, y, row } = hole;
    const at = `row ${row}, x ${size(x)} and y ${size(y)}`;
    if (x >= plate.lengthMm || y >= plate.widthMm) {
      const problem = `${at}, is not on the plate, ${size(plate.lengthMm)} by ${size(plate.widthMm)}.`;
      refuse(
        'Holes',
        at,
        problem,
        'Write x from the end and y from the edge of the plate, or correct its size.',
      );
    }
    const same = seen.find((other) => Math.abs(other.x - x) < sameMm && Math.abs(other.y - y) < sameMm);
    if (same) refuse('Holes', at, `${at}, is the same hole as row ${same.row}.`, 'Leave one of them out.');
    seen.push(hole);
  }
}
