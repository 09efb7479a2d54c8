import type { Point } from './point.js';

/** The convex hull of points, counter-clockwise, without points that stand on its sides; one point or two of a line. */
export function convexHull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const first = sorted[0];
  const last = sorted.at(-1);
  if (!first || !last || (first.x === last.x && first.y === last.y)) return sorted.slice(0, 1);
  return [...chainOf(sorted), ...chainOf(sorted.reverse())];
}

/** One side of the hull, without its last point, which begins the other side. */
function chainOf(sorted: readonly Point[]): Point[] {
  const chain: Point[] = [];
  for (const point of sorted) {
    while (!turnsLeft(chain.at(-2), chain.at(-1), point)) chain.pop();
    chain.push(point);
  }
  return chain.slice(0, -1);
}

function turnsLeft(a: Point | undefined, b: Point | undefined, c: Point): boolean {
  if (!a || !b) return !b || b.x !== c.x || b.y !== c.y;
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) > 0;
}
