// Distance and containment by a general-purpose geometry library.
import Flatten from '@flatten-js/core';
import type { Pair, Ring } from 'polygon-clipping';

const { Point, Polygon, Segment } = Flatten;

/** The distance of two cores: 0 where they meet. */
export function libraryDistance(a: readonly Pair[], b: readonly Pair[]): number {
  if (a.length > 2 && b.some(([x, y]) => insideOf(a, x, y))) return 0;
  if (b.length > 2 && a.some(([x, y]) => insideOf(b, x, y))) return 0;
  let least = Infinity;
  for (const one of sidesOf(a)) {
    for (const other of sidesOf(b)) least = Math.min(least, one.distanceTo(other)[0]);
  }
  return least;
}

/** True where a core grown by a radius lies in a ring: it begins inside, and every side of the ring is farther off. */
export function libraryContains(ring: Ring, corners: readonly Pair[], radius: number): boolean {
  const [x, y] = corners[0] ?? [0, 0];
  if (!insideOf(ring, x, y)) return false;
  const sides = sidesOf(ring);
  return sidesOf(corners).every((one) => sides.every((side) => one.distanceTo(side)[0] > radius));
}

function insideOf(ring: readonly Pair[], x: number, y: number): boolean {
  return new Polygon([...ring]).contains(new Point(x, y));
}

function sidesOf(corners: readonly Pair[]): (Flatten.Segment | Flatten.Point)[] {
  const points = corners.map(([x, y]) => new Point(x, y));
  const [first, second] = points;
  if (!first || !second) return first ? [first] : [];
  if (points.length === 2) return [new Segment(first, second)];
  return points.map((point, at) => new Segment(point, points[(at + 1) % points.length] ?? first));
}
