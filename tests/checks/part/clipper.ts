// The polygon clipper, which throws now and then on sides that nearly meet in one place.
import clipper, { type MultiPolygon, type Pair, type Polygon } from 'polygon-clipping';

type Area = Polygon | MultiPolygon;

/** How often the clipper threw and the turned plane was tried. */
export const clipperFaults = { count: 0 };

const turns = [0, 0.4, 1.1, 1.9, 2.6];

/** What two areas share. */
export function shared(one: Area, other: Area): MultiPolygon {
  return inSomePlane((turned) => clipper.intersection(turned(one), turned(other)));
}

/** What is left of an area without others. */
export function without(one: Area, others: readonly Area[]): MultiPolygon {
  return inSomePlane((turned) => clipper.difference(turned(one), ...others.map(turned)));
}

/** The result in the plane as it is, or where that throws in the plane turned by an angle, turned back. */
function inSomePlane(clip: (turned: (area: Area) => MultiPolygon) => MultiPolygon): MultiPolygon {
  for (const angle of turns) {
    try {
      return turnedBy(
        clip((area) => turnedBy(area, angle)),
        -angle,
      );
    } catch (error) {
      if (angle === turns.at(-1)) throw error;
      clipperFaults.count++;
    }
  }
  throw new RangeError('There is no plane to try.');
}

function turnedBy(area: Area, angle: number): MultiPolygon {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return polygonsOf(area).map((rings) =>
    rings.map((ring) => ring.map(([x, y]): Pair => [x * cos - y * sin, x * sin + y * cos])),
  );
}

function polygonsOf(area: Area): MultiPolygon {
  return isMulti(area) ? area : [area];
}

function isMulti(area: Area): area is MultiPolygon {
  return Array.isArray(area[0]?.[0]?.[0]);
}
