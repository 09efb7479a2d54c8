// The polygon clipper. On sides that nearly meet in one place it throws now and then, or gives nothing at all.
import clipper, { type MultiPolygon, type Pair, type Polygon, type Ring } from 'polygon-clipping';

type Area = Polygon | MultiPolygon;

/** How often the clipper threw, or its two halves did not make the whole, and a turned plane was tried. */
export const clipperFaults = { count: 0 };

const turns = [0, 0.4, 1.1, 1.9, 2.6];
/** Of the whole area: far above rounding, far below any cut. */
const sameShare = 1e-9;

/** What two areas share. */
export function shared(one: Area, other: Area): MultiPolygon {
  return split(one, [other]).shared;
}

/** What is left of an area without others. */
export function without(one: Area, others: readonly Area[]): MultiPolygon {
  return others.length === 0 ? turnedBy(one, 0) : split(one, others).left;
}

export function areaOf(polygons: MultiPolygon): number {
  return polygons.flat().reduce((sum, ring) => sum + ringArea(ring), 0);
}

interface Halves {
  shared: MultiPolygon;
  left: MultiPolygon;
}

/**
 * What an area shares with others and what is left of it, in the plane as it is, or turned by an angle where the
 * clipper fails. Whether it fails is told by its own two results alone: together they must make the whole area.
 */
function split(one: Area, others: readonly Area[]): Halves {
  const whole = Math.abs(areaOf(turnedBy(one, 0)));
  for (const angle of turns) {
    const halves = splitIn(one, others, angle);
    const sum = halves ? areaOf(halves.shared) + areaOf(halves.left) : NaN;
    if (halves && Math.abs(sum - whole) <= sameShare * whole) return halves;
    clipperFaults.count++;
  }
  throw new Error(`The clipper fails in every plane: ${JSON.stringify({ one, others })}`);
}

function splitIn(one: Area, others: readonly Area[], angle: number): Halves | undefined {
  const turned = (area: Area) => turnedBy(area, angle);
  const [first, ...more] = others.map(turned);
  try {
    const all = clipper.union(first ?? [], ...more);
    return {
      shared: turnedBy(clipper.intersection(turned(one), all), -angle),
      left: turnedBy(clipper.difference(turned(one), first ?? [], ...more), -angle),
    };
  } catch {
    return undefined;
  }
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

/** Outer rings run counter-clockwise and count, holes run clockwise and are taken off. */
function ringArea(ring: Ring): number {
  return ring.reduce((sum, [x, y], at) => {
    const [nextX, nextY] = ring[(at + 1) % ring.length] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}
