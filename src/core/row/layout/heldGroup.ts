import type { Range } from '../../check/range.js';
import type { CodeBasis } from '../../check/rowFact.js';
import type { Edge } from '../../part/outline.js';
import type { EdgeCode } from '../../rule/edgeDistance.js';
import type { SlotDirection } from '../../rule/holeEdge.js';
import type { PairDirection } from '../../rule/pairDirection.js';
import { leastWebMm } from '../../rule/pressWeb.js';
import type { LengthUnit } from '../../quantity/units.js';
import { type Hole, leastDimensionMm } from '../../tooling/hole.js';
import type { PlacedGroup } from '../job/readyRow.js';
import type { HoleGroup } from '../job/rowJob.js';
import type { EdgeKinds } from './edgeKindsOf.js';
import { type BoltBasis, boltBasis } from './boltBasis.js';

/** A hole group in a face, with what its distances are checked against. */
export interface HeldGroup extends PlacedGroup {
  bolt: BoltBasis;
  /** Steel that must be left beside a punched hole; none beside one that is drilled or burned. */
  webMm: number;
  /** How each edge is made, for this group: worked out once. */
  edgeKinds: Map<Edge, EdgeKinds | null>;
  limits: Limits;
}

/** What the code asks of a hole with its bolt: worked out once. */
export interface Limits {
  /** At an edge, by how a slot lies to it and how the edge is made. */
  edge: Record<SlotDirection, Map<EdgeKinds, CodeLimit | undefined>>;
  /** To another hole, by the limits of that and by the direction, `open` where it is not known. */
  spacing: Record<PairDirection | 'open', Map<Limits, SpacingLimit>>;
}

/** A least distance of a code. */
export interface CodeLimit {
  limit: Range;
  /** From the center of a slot's end radius, not from the center of the hole. */
  fromEnd: boolean;
  basis: CodeBasis;
}

export interface SpacingLimit extends CodeLimit {
  clear?: Range;
}

/** Limits that were worked out: rows of a list have the same few holes and bolts over and over. */
const known = new Map<string, Limits>();
const mostKnown = 500;

function limitsOf({ hole, bolt, noBolt }: HoleGroup, unit: LengthUnit, code: EdgeCode): Limits {
  const key = `${keyOfHole(hole)}|${bolt?.name}|${bolt?.diameterMm}|${noBolt}|${unit}|${code}`;
  const before = known.get(key);
  if (before) return before;
  const limits: Limits = {
    edge: { 'towards edge': new Map(), 'along edge': new Map(), oblique: new Map() },
    spacing: { along: new Map(), across: new Map(), oblique: new Map(), open: new Map() },
  };
  if (known.size >= mostKnown) known.clear();
  known.set(key, limits);
  return limits;
}

/** A hole as text, each of its sizes in it. */
function keyOfHole(hole: Hole): string {
  switch (hole.shape) {
    case 'round':
      return `round ${hole.diameterMm}`;
    case 'square':
      return `square ${hole.sideMm}`;
    case 'hexagon':
      return `hexagon ${hole.acrossFlatsMm}`;
    default:
      return `${hole.shape} ${hole.widthMm} ${hole.lengthMm}`;
  }
}

export function heldGroup(placed: PlacedGroup, unit: LengthUnit, code: EdgeCode): HeldGroup {
  const { group, index, face, process, thicknessMm } = placed;
  const holeDimensionMm = leastDimensionMm(group.hole);
  const webMm = process.made === 'drill' ? 0 : leastWebMm({ thicknessMm, holeDimensionMm });
  const bolt = boltBasis(group, unit, code);
  const limits = limitsOf(group, unit, code);
  return { group, index, face, process, thicknessMm, bolt, webMm, edgeKinds: new Map(), limits };
}
