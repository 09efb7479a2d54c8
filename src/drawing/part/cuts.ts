import type { CauseKind, Edge } from '../../core/part/outline.js';
import type { Face } from '../../core/part/part.js';
import type { Point } from '../../core/part/point.js';
import { counted, type Work } from './work.js';

/** One notch or clip of a face: its edges, in the order they go around the part. */
export interface Cut {
  number: number;
  edges: Edge[];
}

/** The notches or clips of a face, in the order of the row. */
export function cutsOf({ outline }: Face, is: CauseKind): Cut[] {
  const cuts = new Map<number, Edge[]>();
  for (const edge of startingOutside(outline.edges, is)) {
    if (edge.cause.is !== is) continue;
    const number = edge.cause.number ?? 1;
    cuts.set(number, [...(cuts.get(number) ?? []), edge]);
  }
  return [...cuts].map(([number, edges]) => ({ number, edges })).sort((a, b) => a.number - b.number);
}

/** The edges from one on that is not of a cut, so that no cut begins in its middle. */
function startingOutside(edges: readonly Edge[], is: CauseKind): Edge[] {
  const at = Math.max(
    0,
    edges.findIndex(({ cause }) => cause.is !== is),
  );
  return [...edges.slice(at), ...edges.slice(0, at)];
}

/** The middle of a straight cut; of a notch the middle of its corners, which lie deepest in the part. */
export function middleOf({ edges }: Cut): Point {
  const corners = edges.slice(0, -1).map(({ to }) => to);
  const points = corners.length > 0 ? corners : edges.flatMap(({ from, to }) => [from, to]);
  const mean = (of: 'x' | 'y') => points.reduce((sum, point) => sum + point[of], 0) / points.length;
  return { x: mean('x'), y: mean('y') };
}

/** Why some of the cuts of a row are not drawn on the face that is: in another leg, or without a place. */
export function notDrawn(
  name: Work['name'],
  cell: string,
  { asked, here, anywhere }: { asked: number; here: number; anywhere: number },
): string[] {
  const [elsewhere, unplaced] = [Math.max(0, anywhere - here), Math.max(0, asked - anywhere)];
  const are = (count: number) => (count === 1 ? 'is' : 'are');
  return [
    ...(elsewhere > 0
      ? [`${counted(elsewhere, name)} in another leg or flange ${are(elsewhere)} not drawn`]
      : []),
    ...(unplaced > 0
      ? [`${cell} gives no place, so ${counted(unplaced, name)} ${are(unplaced)} not drawn`]
      : []),
  ];
}
