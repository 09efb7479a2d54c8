import { type Clearance, clearance } from './clearance.js';
import { type Edge, type Outline, sameCause } from './outline.js';
import type { Point } from './point.js';
import type { Shape } from './shape.js';
import { toleranceMm } from './tolerance.js';

/**
 * What one boundary or cut takes away: all that lies beyond each of its edges. A face is all that lies in none of its
 * voids. Beyond a single edge lies a half plane; a notch of two or three edges goes on outward for ever, so that the
 * least move out of it is never through its mouth.
 */
export interface Void {
  readonly edges: readonly Edge[];
  /** Only of a notch with several edges. */
  readonly notch?: Shape;
}

/** How far outward a notch goes on: farther than any hole lies off a part. */
const farMm = 1e6;

/** The voids around a face, in the order of its edges. */
export function voidsOf({ edges }: Outline): Void[] {
  const voids: Void[] = [];
  for (let at = 0; at < edges.length; ) {
    const chain = [edges[at++] as Edge];
    for (let next = edges[at]; next && sameCause(next.cause, (chain[0] as Edge).cause); next = edges[at]) {
      chain.push(next);
      at++;
    }
    voids.push(chain.length === 1 ? { edges: chain } : { edges: chain, notch: notchOf(chain) });
  }
  return voids;
}

function notchOf(chain: readonly Edge[]): Shape {
  const [first, ...others] = chain;
  const last = others.at(-1);
  if (!first || !last) throw new RangeError('A notch has several edges.');
  const begin = beyond(first.to, first.from);
  const end = beyond(last.from, last.to);
  const onward = others.length === 1 ? outwardOf(begin, end) : [];
  // The steel lies on the left of the edges, so they run around the notch clockwise.
  return { core: [begin, ...others.map(({ from }) => from), end, ...onward].reverse(), radius: 0 };
}

/** Far along the line from one point through another. */
function beyond(from: Point, through: Point): Point {
  const [x, y] = [through.x - from.x, through.y - from.y];
  const scale = farMm / Math.hypot(x, y);
  return { x: through.x + x * scale, y: through.y + y * scale };
}

/** Two edges open like a fan; a flat one would end too near at the line between its far ends, so it goes on there. */
function outwardOf(begin: Point, end: Point): Point[] {
  const scale = farMm / Math.hypot(end.x - begin.x, end.y - begin.y);
  const [x, y] = [(end.y - begin.y) * scale, (begin.x - end.x) * scale];
  return [end, begin].map((point) => ({ x: point.x + x, y: point.y + y }));
}

/** The signed distance of a shape from a void: above 0 clear of it, below 0 minus the least move out of it. */
export function clearOf({ edges, notch }: Void, shape: Shape): Clearance {
  return notch ? clearance(shape, notch) : clearOfLine(edges[0] as Edge, shape);
}

/** True for a shape that lies in a void with all of it. */
export function liesIn(around: Void, { core, radius }: Shape): boolean {
  return core.every(
    (point) => clearOf(around, { core: [point], radius: 0 }).distance <= toleranceMm - radius,
  );
}

/** The same for what lies beyond the line of one edge; the second place is on that line. */
export function clearOfLine(edge: Edge, { core, radius }: Shape): Clearance {
  const { from, to } = edge;
  const length = Math.sqrt((to.x - from.x) ** 2 + (to.y - from.y) ** 2);
  const nx = (from.y - to.y) / length;
  const ny = (to.x - from.x) / length;
  let least = Infinity;
  let nearest = from;
  for (const point of core) {
    const inward = (point.x - from.x) * nx + (point.y - from.y) * ny;
    if (inward >= least) continue;
    least = inward;
    nearest = point;
  }
  return {
    distance: least - radius,
    at: [
      { x: nearest.x - nx * radius, y: nearest.y - ny * radius },
      { x: nearest.x - nx * least, y: nearest.y - ny * least },
    ],
  };
}
