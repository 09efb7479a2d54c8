import { type Clearance, clearance, clearanceMm } from './clearance.js';
import { type Box, cornersOf, type Shape, sweep, translate } from './shape.js';

/** What a clearance may be, in mm, wherever things that are not placed lie. Of placed things both are the same. */
export interface ClearanceRange {
  readonly least: Clearance;
  readonly most: number;
}

/** A shape, and where its center may lie if it is not placed. */
export interface Placed {
  readonly shape: Shape;
  readonly free?: Box;
  /** All places of the shape together, where they were worked out before. */
  readonly swept?: Shape;
}

/**
 * What the clearance of two shapes may be where one or both are not placed.
 *
 * Formula: least = clearance of the swept shapes; most = the greatest at the corners of the box of their relative
 *   places. The signed clearance of convex shapes is a convex function of that place, inside an overlap too (there it
 *   is minus the distance to the boundary of a convex set), so its maximum is at a corner.
 * @param a the first shape, mm, with its freedom
 * @param b the second shape, mm, with its freedom
 * @returns `least` never above, `most` never below the clearance at any places in the boxes, mm. Exact but for a least
 *   below 0 with freedom in x and y, or with polygons: there `least` may be lower than any single place gives.
 * Valid as {@link clearance}. Throws nothing.
 * @example clearanceRange({ shape: hole, free: { x0: -5, x1: 5, y0: 0, y1: 0 } }, { shape: bend })
 * Source: plane geometry.
 */
export function clearanceRange(a: Placed, b: Placed): ClearanceRange {
  const least = clearance(sweptOf(a), sweptOf(b));
  if (!a.free && !b.free) return { least, most: least.distance };
  let most = -Infinity;
  for (const { x, y } of cornersOf(relativeFreedom(a.free ?? fixed, b.free ?? fixed))) {
    most = Math.max(most, clearanceMm(translate(a.shape, x, y), b.shape));
  }
  return { least, most };
}

/** The shape at all the places it may take. */
export function sweptOf({ shape, free, swept }: Placed): Shape {
  return swept ?? (free ? sweep(shape, free) : shape);
}

const fixed: Box = { x0: 0, x1: 0, y0: 0, y1: 0 };

/** How the place of `a`, seen from `b`, may move. */
function relativeFreedom(a: Box, b: Box): Box {
  return { x0: a.x0 - b.x1, x1: a.x1 - b.x0, y0: a.y0 - b.y1, y1: a.y1 - b.y0 };
}
