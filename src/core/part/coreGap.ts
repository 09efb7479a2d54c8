import type { Point } from './point.js';
import { toleranceMm } from './tolerance.js';

/**
 * How two cores lie to each other: the gap, or minus the depth of overlap; a unit direction from `a` to `b`; the two
 * places it is measured between.
 */
export interface CoreGap {
  distance: number;
  nx: number;
  ny: number;
  a: Point;
  b: Point;
}

type Core = readonly Point[];

/**
 * The gap between two convex cores, or minus the least move that parts them.
 *
 * Formula: apart: the nearest of all corners to all sides; else the greatest separation over the normals of all sides
 *   (separating axes), which is not above 0. A segment has its two normals and its own direction as axes.
 */
export function coreGap(a: Core, b: Core): CoreGap {
  const axis = { separation: -Infinity, nx: 0, ny: 1 };
  widest(a, b, 1, axis);
  if (axis.separation <= 0) widest(b, a, -1, axis);
  // Two points have no axis.
  const apart = axis.separation > 0 || axis.separation === -Infinity;
  return apart ? nearest(a, b, axis) : deepest(a, b, axis);
}

interface Axis {
  separation: number;
  nx: number;
  ny: number;
}

/** Keeps in `widestAxis` the axis of `from` along which `to` stands farthest off; ends where the two are apart. */
function widest(from: Core, to: Core, sign: 1 | -1, widestAxis: Axis): void {
  const count = from.length;
  if (count < 2) return;
  for (let at = 0; at < count; at++) {
    const start = from[at] as Point;
    const end = from[at + 1 === count ? 0 : at + 1] as Point;
    const length = Math.sqrt((end.x - start.x) ** 2 + (end.y - start.y) ** 2);
    if (length === 0) continue;
    const tx = (end.x - start.x) / length;
    const ty = (end.y - start.y) / length;
    offer(widestAxis, to, start, ty, -tx, sign);
    // Beyond the ends of a segment: its own direction parts two segments in one line.
    if (count === 2) offer(widestAxis, to, end, tx, ty, sign);
    if (widestAxis.separation > 0) return;
  }
}

function offer(axis: Axis, to: Core, base: Point, nx: number, ny: number, sign: 1 | -1): void {
  let least = Infinity;
  for (let at = 0; at < to.length; at++) {
    const point = to[at] as Point;
    const along = (point.x - base.x) * nx + (point.y - base.y) * ny;
    if (along < least) least = along;
  }
  if (least <= axis.separation) return;
  axis.separation = least;
  axis.nx = nx * sign;
  axis.ny = ny * sign;
}

/** The nearest places of two cores that are apart. */
function nearest(a: Core, b: Core, axis: Axis): CoreGap {
  const found: Nearest = { square: Infinity, cornerX: 0, cornerY: 0, sideX: 0, sideY: 0 };
  cornersToSides(a, b, found);
  const fromB = found.square;
  cornersToSides(b, a, found);
  const corner = { x: found.cornerX, y: found.cornerY };
  const side = { x: found.sideX, y: found.sideY };
  const [pointA, pointB] = found.square < fromB ? [side, corner] : [corner, side];
  const distance = Math.sqrt(found.square);
  // Two places this near show no direction: rounding would decide it.
  if (distance <= toleranceMm) return { distance, nx: axis.nx, ny: axis.ny, a: pointA, b: pointB };
  const nx = (pointB.x - pointA.x) / distance;
  const ny = (pointB.y - pointA.y) / distance;
  return { distance, nx, ny, a: pointA, b: pointB };
}

interface Nearest {
  square: number;
  cornerX: number;
  cornerY: number;
  sideX: number;
  sideY: number;
}

function cornersToSides(corners: Core, sides: Core, found: Nearest): void {
  // A segment has one side and a point is a side without length.
  const count = sides.length < 3 ? 1 : sides.length;
  for (let side = 0; side < count; side++) {
    const start = sides[side] as Point;
    const end = sides[side + 1 < sides.length ? side + 1 : 0] as Point;
    const dx = end.x - start.x;
    const dy = end.y - start.y;
    const square = dx * dx + dy * dy;
    for (let at = 0; at < corners.length; at++) {
      const corner = corners[at] as Point;
      const along = (corner.x - start.x) * dx + (corner.y - start.y) * dy;
      const share = along <= 0 ? 0 : along >= square ? 1 : along / square;
      const sideX = share === 1 ? end.x : start.x + share * dx;
      const sideY = share === 1 ? end.y : start.y + share * dy;
      const apart = (corner.x - sideX) ** 2 + (corner.y - sideY) ** 2;
      if (apart >= found.square) continue;
      found.square = apart;
      found.cornerX = corner.x;
      found.cornerY = corner.y;
      found.sideX = sideX;
      found.sideY = sideY;
    }
  }
}

/** The two places of an overlap: as far as `a` reaches along the axis and as far back as `b` does, in one line. */
function deepest(a: Core, b: Core, { separation, nx, ny }: Axis): CoreGap {
  const reachA = reach(a, nx, ny);
  const reachB = reach(b, -nx, -ny);
  // The places along the side, seen from a and (turned round) from b.
  const across = (Math.max(reachA.from, -reachB.to) + Math.min(reachA.to, -reachB.from)) / 2;
  const place = (along: number): Point => ({ x: along * nx - across * ny, y: along * ny + across * nx });
  return { distance: separation, nx, ny, a: place(reachA.most), b: place(-reachB.most) };
}

/** How far a core reaches along an axis, and the interval of the side that does, at right angles to it. */
function reach(core: Core, nx: number, ny: number): { most: number; from: number; to: number } {
  let most = -Infinity;
  for (const { x, y } of core) most = Math.max(most, x * nx + y * ny);
  let [from, to] = [Infinity, -Infinity];
  for (const { x, y } of core) {
    if (x * nx + y * ny < most - toleranceMm) continue;
    const across = y * nx - x * ny;
    from = Math.min(from, across);
    to = Math.max(to, across);
  }
  return { most, from, to };
}
