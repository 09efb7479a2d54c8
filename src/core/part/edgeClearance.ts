import { type Clearance, clearance, clearanceMm } from './clearance.js';
import type { ClearanceRange } from './clearanceRange.js';
import type { Freedom } from './freedom.js';
import type { Edge } from './outline.js';
import type { Point } from './point.js';
import { type Shape, translate } from './shape.js';
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
 * What {@link edgeClearance} may be wherever a shape lies in its freedom: `least` is that of the swept shape. `most` is
 * exact at a single edge, and an upper bound at a notch that some of the outermost places lie in.
 */
export function edgeClearanceRange(freedom: Freedom, edge: Edge, around: Void): ClearanceRange {
  const least = edgeClearance(freedom.swept, edge, around);
  const inVoid: number[] = [];
  for (const { shape } of freedom.outermost) inVoid.push(clearOf(around, shape).distance);
  // The distance from a void is a convex function of the place: if no outermost place is clear of it, none is.
  if (inVoid.every(reachesIn)) return { least, most: Math.max(...inVoid) };
  const segment = segmentOf(edge);
  let most = -Infinity;
  for (let at = 0; at < inVoid.length; at++) {
    if (!around.notch && reachesIn(inVoid[at] as number)) continue;
    most = Math.max(most, clearanceMm(freedom.outermost[at]?.shape ?? freedom.shape, segment));
  }
  if (around.notch || !inVoid.some(reachesIn)) return { least, most };
  for (const shape of onLine(freedom, inVoid)) most = Math.max(most, clearanceMm(shape, segment));
  return { least, most };
}

function reachesIn(clearMm: number): boolean {
  return clearMm < -toleranceMm;
}

/** The shape where the boundary of its freedom crosses into a half plane: the part that is clear ends there. */
function onLine({ shape, outermost }: Freedom, inVoid: readonly number[]): Shape[] {
  return outermost.flatMap(({ offset: a }, at) => {
    const next = (at + 1) % outermost.length;
    const b = outermost[next]?.offset ?? a;
    const [clearA, clearB] = [inVoid[at] as number, inVoid[next] as number];
    if (reachesIn(clearA) === reachesIn(clearB)) return [];
    const share = (clearA + toleranceMm) / (clearA - clearB);
    return [translate(shape, a.x + share * (b.x - a.x), a.y + share * (b.y - a.y))];
  });
}

function segmentOf({ from, to }: Edge): Shape {
  return { core: [from, to], radius: 0 };
}

function isBetween(foot: Point, { from, to }: Edge): boolean {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const along = (foot.x - from.x) * dx + (foot.y - from.y) * dy;
  return along >= 0 && along <= dx * dx + dy * dy;
}
