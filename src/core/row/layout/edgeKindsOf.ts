import type { Edge } from '../../part/outline.js';
import { type EdgeKind, edgeKinds } from '../../rule/edgeDistance.js';
import type { ReadRow } from '../job/readyRow.js';
import type { HoleGroup } from '../job/rowJob.js';
import { endKindOf, longEdgeKindOf } from './faceOutline.js';

/** How an edge may be made: as it is taken, and all that it may be where the row does not say. */
export interface EdgeKinds {
  taken: EdgeKind;
  possible: readonly EdgeKind[];
}

/** One object for each: what is worked out for it is found again by it. */
const only: Record<EdgeKind, EdgeKinds> = {
  sheared: { taken: 'sheared', possible: ['sheared'] },
  'machine cut': { taken: 'machine cut', possible: ['machine cut'] },
  rolled: { taken: 'rolled', possible: ['rolled'] },
  'sheared connection end': { taken: 'sheared connection end', possible: ['sheared connection end'] },
};
const anyTakenAsSheared: EdgeKinds = { taken: 'sheared', possible: edgeKinds };

type Row = Pick<ReadRow, 'cutBy' | 'section' | 'stock'>;

/**
 * How an edge is made, for the holes of a group. A plate's long edges and every end that a press may have cut are taken
 * as sheared, which asks for the most, unless the row says otherwise; the long edges of bars and shapes are rolled.
 * Null for a heel, which is no free edge.
 */
export function edgeKindsOf(
  row: Row,
  { edgeKind, endKind }: HoleGroup,
  { cause, kind }: Edge,
): EdgeKinds | null {
  if (kind === 'none') return null;
  switch (cause.is) {
    case 'bottom edge':
    case 'top edge':
    case 'toe':
      return kindsOf(edgeKind ?? (row.stock && longEdgeKindOf(row)), longEdgeKindOf(row));
    case 'left end':
    case 'right end':
    case 'miter left':
    case 'miter right':
      return kindsOf(endKind, endKindOf(row));
    default:
      return only[kind];
  }
}

/** What is taken as sheared may be any; sawn, burned and rolled edges are what they are. */
function kindsOf(said: EdgeKind | undefined, taken: EdgeKind): EdgeKinds {
  if (said !== undefined) return only[said];
  return taken === 'sheared' ? anyTakenAsSheared : only[taken];
}
