import type { Edge } from '../../core/part/outline.js';
import type { Point } from '../../core/part/point.js';

/** Edges one after the other that are drawn in one line. */
export interface Run {
  points: Point[];
  /** Read, not given. */
  read: boolean;
  /** All around the part. */
  closed: boolean;
}

const sameMm = 1e-6;

/** The outline between two places along the part, in lines as long as they go on alike. */
export function runsBetween(
  edges: readonly Edge[],
  [fromMm, toMm]: readonly [number, number],
  isRead: (edge: Edge) => boolean,
): Run[] {
  const runs: Run[] = [];
  for (const edge of edges) {
    const piece = pieceOf(edge, fromMm, toMm);
    if (!piece) continue;
    const read = isRead(edge);
    const last = runs.at(-1);
    if (last && last.read === read && isSame(last.points.at(-1), piece[0])) last.points.push(piece[1]);
    else runs.push({ points: [...piece], read, closed: false });
  }
  return joinedAround(runs);
}

/** The last line goes on in the first where the outline begins in the middle of one. */
function joinedAround(runs: Run[]): Run[] {
  const [first, last] = [runs[0], runs.at(-1)];
  if (!first || !last || first.read !== last.read || !isSame(last.points.at(-1), first.points[0]))
    return runs;
  if (first === last) return [{ ...first, points: first.points.slice(0, -1), closed: true }];
  return [{ ...first, points: [...last.points, ...first.points.slice(1)] }, ...runs.slice(1, -1)];
}

/** What of an edge lies between two places along the part. */
function pieceOf({ from, to }: Edge, fromMm: number, toMm: number): [Point, Point] | undefined {
  const shareAt = (x: number) => (x - from.x) / (to.x - from.x);
  const isUpright = Math.abs(to.x - from.x) < sameMm;
  if (isUpright) return from.x >= fromMm - sameMm && from.x <= toMm + sameMm ? [from, to] : undefined;
  const [low, high] = [shareAt(fromMm), shareAt(toMm)].sort((a, b) => a - b) as [number, number];
  const [start, end] = [Math.max(0, low), Math.min(1, high)];
  if (start >= end) return undefined;
  const at = (share: number): Point => ({
    x: from.x + share * (to.x - from.x),
    y: from.y + share * (to.y - from.y),
  });
  return [start === 0 ? from : at(start), end === 1 ? to : at(end)];
}

function isSame(a: Point | undefined, b: Point | undefined): boolean {
  return !!a && !!b && Math.hypot(a.x - b.x, a.y - b.y) < sameMm;
}
