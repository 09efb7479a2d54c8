import { coreGap } from './coreGap.js';
import type { Point } from './point.js';
import type { Shape } from './shape.js';

/** A gap in mm, or minus the depth of an overlap, and the places on the two boundaries it is measured between. */
export interface Clearance {
  readonly distance: number;
  readonly at: readonly [Point, Point];
}

/**
 * The clearance between two shapes.
 *
 * Formula: c = gap of the cores − ra − rb. Where they overlap, −c is the least move that parts them.
 * @param a the first shape, mm
 * @param b the second shape, mm
 * @returns the clearance in mm: above 0 a gap, below 0 minus the depth of overlap; with the nearest places (of an
 *   overlap: how deep each reaches into the other) on the boundary of a and of b
 * Valid for convex cores, points and segments included. Throws nothing.
 * @example clearance({ core: [{ x: 0, y: 0 }], radius: 5 }, { core: [{ x: 30, y: 0 }], radius: 10 }).distance // 15
 * Source: plane geometry (separating axes).
 */
export function clearance(a: Shape, b: Shape): Clearance {
  const gap = coreGap(a.core, b.core);
  return {
    distance: gap.distance - a.radius - b.radius,
    at: [
      { x: gap.a.x + gap.nx * a.radius, y: gap.a.y + gap.ny * a.radius },
      { x: gap.b.x - gap.nx * b.radius, y: gap.b.y - gap.ny * b.radius },
    ],
  };
}

/** The distance of {@link clearance} in mm, without its places. */
export function clearanceMm(a: Shape, b: Shape): number {
  return coreGap(a.core, b.core).distance - a.radius - b.radius;
}
