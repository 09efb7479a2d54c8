import type { ClearanceRange } from '../../part/clearanceRange.js';
import type { CodeBasis } from '../../check/rowFact.js';
import { exactly, type Range } from '../../check/range.js';
import type { EdgeCode } from '../../rule/edgeDistance.js';
import type { LeastDistance } from '../../rule/leastDistance.js';
import { punchDiagonalMm } from '../../tooling/hole.js';
import type { HeldGroup } from './heldGroup.js';

/** No code asks for more than this many times the hole, to an edge or to another hole. From the tables built in. */
const mostOfHole = 3;

/** What is certain of a least distance: it fails under one number, and holds from another. */
export function rangeOf(least: LeastDistance, holes: readonly HeldGroup[]): Range {
  if (least.known) return exactly(least.leastMm);
  const sizeMm = Math.max(...holes.map(({ group }) => punchDiagonalMm(group.hole)));
  return { least: least.failsUnderMm ?? 0, most: least.holdsFromMm ?? mostOfHole * sizeMm };
}

/** What a distance may be, as a range. */
export function givenOf({ least, most }: ClearanceRange): Range {
  return { least: least.distance, most };
}

/** What the limit of a code goes by. */
export function basisOf({ bolt }: HeldGroup, code: EdgeCode, least: LeastDistance): CodeBasis {
  return {
    code,
    // EN goes by the hole: a bolt tells only whether it is a bolt hole at all.
    ...(bolt.is === 'read' || (bolt.is === 'given' && code !== 'EN') ? { bolt: bolt.bolt.name } : {}),
    ...(bolt.is === 'read' ? { boltRead: true as const } : {}),
    ...(least.known ? {} : { unknown: least.why }),
    ...(least.source === undefined ? {} : { source: least.source }),
  };
}
