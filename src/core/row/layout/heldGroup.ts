import type { Range } from '../../check/range.js';
import type { CodeBasis } from '../../check/rowFact.js';
import type { Edge } from '../../part/outline.js';
import type { EdgeCode } from '../../rule/edgeDistance.js';
import { leastWebMm } from '../../rule/pressWeb.js';
import type { LengthUnit } from '../../quantity/units.js';
import { leastDimensionMm } from '../../tooling/hole.js';
import type { PlacedGroup } from '../readyRow.js';
import type { HoleGroup } from '../rowJob.js';
import type { EdgeKinds } from './edgeKindsOf.js';
import { type BoltBasis, boltBasis } from './boltBasis.js';

/** A hole group in a face, with what its distances are held against. */
export interface HeldGroup extends PlacedGroup {
  bolt: BoltBasis;
  /** Steel that must be left beside a punched hole; none beside one that is drilled or burned. */
  webMm: number;
  /** How each edge is made, for this group: worked out once. */
  edgeKinds: Map<Edge, EdgeKinds | null>;
  /** What the code asks at an edge, by how the edge is made and how a slot lies to it: worked out once. */
  edgeLimits: Map<string, CodeLimit | undefined>;
  /** What the code asks to a hole of another group, by its index and the direction. */
  spacingLimits: Map<string, SpacingLimit>;
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
const known = new Map<string, Pick<HeldGroup, 'edgeLimits' | 'spacingLimits'>>();
const mostKnown = 500;

function limitsOf({ hole, bolt, noBolt }: HoleGroup, unit: LengthUnit, code: EdgeCode) {
  const key = JSON.stringify([hole, bolt?.name, bolt?.diameterMm, noBolt, unit, code]);
  const own = known.get(key) ?? { edgeLimits: new Map(), spacingLimits: new Map() };
  if (known.size >= mostKnown) known.clear();
  known.set(key, own);
  return own;
}

export function heldGroup(placed: PlacedGroup, unit: LengthUnit, code: EdgeCode): HeldGroup {
  const { group, process, thicknessMm } = placed;
  const holeDimensionMm = leastDimensionMm(group.hole);
  const webMm = process.made === 'drill' ? 0 : leastWebMm({ thicknessMm, holeDimensionMm });
  const bolt = boltBasis(group, unit, code);
  return { ...placed, bolt, webMm, edgeKinds: new Map(), ...limitsOf(group, unit, code) };
}
