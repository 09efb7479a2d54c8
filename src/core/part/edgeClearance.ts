import { type Clearance, clearance } from './clearance.js';
import type { ClearanceRange } from './clearanceRange.js';
import type { Edge } from './outline.js';
import type { Point } from './point.js';
import { type Box, cornersOf, type Shape, sweep, translate } from './shape.js';
import { toleranceMm } from './tolerance.js';
import { clearOf, type Void } from './void.js';

/**
 * The signed clearance of a shape from one edge of a face.
 *
 * Sign: the void of the edge decides. A shape that reaches into it by more than the tolerance has minus the least move
 * that takes it out again: the overhang beyond the line of an end, a long edge, a miter or a clip; the depth in a notch
 * (the same at every edge of that notch). Every other shape has its plain distance from the edge. So a shape lies on
 * the face exactly when no edge of the outline is negative.
 */
export function edgeClearance(shape: Shape, edge: Edge, around: Void): Clearance {
  const clear = clearOf(around, shape);
  if (clear.distance < -toleranceMm) return clear;
  // Where the foot on the line lies on the edge, the distance from the line is that from the edge.
  if (!around.notch && isBetween(clear.at[1], edge)) return clear;
  return clearance(shape, segmentOf(edge));
}

/**
 * What {@link edgeClearance} may be wherever the center lies in a box: `least` is that of the swept shape. `most` is
 * exact at a single edge, and an upper bound at a notch that some of the corners of the box put the shape into.
 */
export function edgeClearanceRange(shape: Shape, free: Box, edge: Edge, around: Void): ClearanceRange {
  const least = edgeClearance(sweep(shape, free), edge, around);
  const corners = cornersOf(free).map((offset) => {
    const moved = translate(shape, offset.x, offset.y);
    return { offset, moved, clearMm: clearOf(around, moved).distance };
  });
  // The distance from a void is a convex function of the place: if no corner is clear of it, no place is.
  const inVoid = Math.max(...corners.map(({ clearMm }) => clearMm));
  if (inVoid < -toleranceMm) return { least, most: inVoid };
  const segment = segmentOf(edge);
  const clear = around.notch ? corners : corners.filter(({ clearMm }) => clearMm >= -toleranceMm);
  const places = clear.map(({ moved }) => moved);
  if (!around.notch) places.push(...onLine(shape, corners));
  return { least, most: Math.max(...places.map((place) => clearance(place, segment).distance)) };
}

interface Corner {
  offset: Point;
  clearMm: number;
}

/** The shape where the boundary of its freedom crosses into a half plane: the part that is clear ends there. */
function onLine(shape: Shape, corners: readonly Corner[]): Shape[] {
  return corners.flatMap((a, at) => {
    const b = corners[(at + 1) % corners.length] as Corner;
    if (a.clearMm < -toleranceMm === b.clearMm < -toleranceMm) return [];
    const share = (a.clearMm + toleranceMm) / (a.clearMm - b.clearMm);
    const [dx, dy] = [b.offset.x - a.offset.x, b.offset.y - a.offset.y];
    return [translate(shape, a.offset.x + share * dx, a.offset.y + share * dy)];
  });
}

function segmentOf({ from, to }: Edge): Shape {
  return { core: [from, to], radius: 0 };
}

function isBetween(foot: Point, { from, to }: Edge): boolean {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const along = (foot.x - from.x) * dx + (foot.y - from.y) * dy;
  return along >= 0 && along <= dx * dx + dy * dy;
}
