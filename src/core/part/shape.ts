import { convexHull } from './convexHull.js';
import type { Point } from './point.js';

/**
 * A convex core grown by a radius: a hole, a punch, a die. The core is a point (1 point), a segment (2) or a convex
 * polygon (3 and more, counter-clockwise).
 */
export interface Shape {
  readonly core: readonly Point[];
  readonly radius: number;
}

/** Where a center may lie, as offsets from the place given with it: a point, a segment or a rectangle. */
export interface Box {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** The shape moved by an offset in mm. */
export function translate(shape: Shape, x: number, y: number): Shape {
  return { core: shape.core.map((point) => ({ x: point.x + x, y: point.y + y })), radius: shape.radius };
}

/** The least convex shape that covers `shape` wherever it may lie in the box. */
export function sweep(shape: Shape, free: Box): Shape {
  const everywhere: Point[] = [];
  for (const { x, y } of cornersOf(free)) {
    for (const point of shape.core) everywhere.push({ x: point.x + x, y: point.y + y });
  }
  // A point sweeps the box itself, whose corners already run counter-clockwise.
  const core = shape.core.length === 1 ? everywhere : convexHull(everywhere);
  return { core, radius: shape.radius };
}

/** The corners of a box: one of a point, two of a segment, four of a rectangle. */
export function cornersOf({ x0, x1, y0, y1 }: Box): Point[] {
  const corners = [{ x: x0, y: y0 }];
  if (x0 !== x1) corners.push({ x: x1, y: y0 });
  if (y0 === y1) return corners;
  if (x0 !== x1) corners.push({ x: x1, y: y1 });
  corners.push({ x: x0, y: y1 });
  return corners;
}
