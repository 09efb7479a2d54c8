import { requirePositive } from '../requireRange.js';
import type { Point } from '../part/point.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { holeCountStep } from './holeCountStep.js';

export interface HoleCircle {
  /** Of the circle through the centers. */
  diameterMm: number;
  count: number;
  /** Of the first hole, from the length of the part, counter-clockwise. */
  startRad: number;
  center: Point;
}

/** In 1 mm: what a sine leaves behind that is rounding, and holes across from each other would differ by it. */
const digits = 1e9;

/**
 * The centers of holes on a circle, evenly spaced, as the bolts of a flange.
 *
 * Formula: x = cx + D/2 · cos(α + 2πi/n); y = cy + D/2 · sin(α + 2πi/n)
 * @param circle diameter in mm, number of holes, angle of the first in rad, center in mm
 * @param working collects the steps when given
 * @returns centers in mm, counter-clockwise from the first
 * Valid for one hole and more. Throws `invalid` for a diameter that is not above zero.
 * @example circleHoles({ diameterMm: 200, count: 4, startRad: 0, center: { x: 0, y: 0 } })[1] // { x: 0, y: 100 }
 * Source: plane geometry.
 */
export function circleHoles({ diameterMm, count, startRad, center }: HoleCircle, working?: Working): Point[] {
  requirePositive('Diameter', diameterMm);
  const radiusMm = diameterMm / 2;
  const reach = (share: number) => Math.round(radiusMm * share * digits) / digits;
  const holes = Array.from({ length: count }, (_, at): Point => {
    const angle = startRad + (2 * Math.PI * at) / count;
    return { x: center.x + reach(Math.cos(angle)), y: center.y + reach(Math.sin(angle)) };
  });
  if (count > 1) {
    working?.step({
      title: 'Between neighbors',
      formula: 's = D · sin(π / n)',
      values: [
        lengthValue('D', 'diameter of the circle through the centers', diameterMm),
        { symbol: 'n', meaning: 'holes', kind: 'count', value: count },
      ],
      result: lengthValue('s', 'straight from center to center', diameterMm * Math.sin(Math.PI / count)),
      source: 'plane geometry',
    });
  }
  holeCountStep(count, working);
  return holes;
}
