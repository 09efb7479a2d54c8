// What a hole's clearance from one edge is, by the referees.
import type { Pair } from 'polygon-clipping';
import type { Cause, Edge } from '../../../src/core/part/outline.js';
import type { OutlineInput } from '../../../src/core/part/outlineInput.js';
import { cutAreas, uncut } from './areaReferee.js';
import type { Grown } from './holeReferee.js';
import { libraryDistance } from './libraryReferee.js';
import { signedDistance } from './signedDistance.js';

const outside = 3000;

/** What each boundary and cut of a face takes away, as a polygon that reaches far outside. */
export interface Taken {
  cause: Cause;
  area: readonly Pair[];
}

export function takenFrom(input: OutlineInput): Taken[] {
  const [a, b, c, d] = uncut(input);
  const isMiter = (end: 'left' | 'right') => input[end].miter !== undefined;
  const sides: Taken[] = [
    { cause: { is: input.bottom.is }, area: beyond(a, b) },
    { cause: { is: isMiter('right') ? 'miter right' : 'right end' }, area: beyond(b, c) },
    { cause: { is: input.top.is }, area: beyond(c, d) },
    { cause: { is: isMiter('left') ? 'miter left' : 'left end' }, area: beyond(d, a) },
  ];
  return [...sides, ...cutAreas(input)];
}

/** All that lies on the right of a line, as far as any hole. */
function beyond([ax, ay]: Pair, [bx, by]: Pair): Pair[] {
  const scale = outside / Math.hypot(bx - ax, by - ay);
  const [x, y] = [(bx - ax) * scale, (by - ay) * scale];
  return [
    [ax - x, ay - y],
    [bx + x, by + y],
    [bx + x + y, by + y - x],
    [ax - x + y, ay - y - x],
  ];
}

/** What the library says, or the search by directions where the library has no number. */
export interface Refereed {
  distance: number;
  bySearch: () => number;
}

/** Below 0 minus the least move out of what the edge's cause takes away; else the distance from the edge. */
export function refereedClearance(
  { corners, radius }: Grown,
  edge: Edge,
  taken: readonly Taken[],
  mayOverlap: boolean,
): Refereed {
  if (mayOverlap) {
    const own = taken.find(({ cause }) => cause.is === edge.cause.is && cause.number === edge.cause.number);
    if (!own) throw new Error(`no such cause: ${edge.cause.is}`);
    const distance = signedDistance(corners, own.area, radius) - radius;
    if (distance < -1e-6) return { distance, bySearch: () => distance };
  }
  const side = sideOf(edge);
  return {
    distance: libraryDistance(corners, side) - radius,
    bySearch: () => signedDistance(corners, side) - radius,
  };
}

export function sideOf({ from, to }: Edge): Pair[] {
  return [
    [from.x, from.y],
    [to.x, to.y],
  ];
}
