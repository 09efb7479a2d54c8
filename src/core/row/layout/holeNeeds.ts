import type { LengthUnit } from '../../quantity/units.js';
import type { HoleToEdge } from '../../part/edgeClearances.js';
import type { ClearanceRange } from '../../part/clearanceRange.js';
import type { Edge } from '../../part/outline.js';
import type { PlacedHole } from '../../part/part.js';
import { boltOfHole } from '../../rule/boltOfHole.js';
import type { BoltSize } from '../../rule/boltSize.js';
import type { EdgeCode, EdgeKind } from '../../rule/edgeDistance.js';
import { leastHoleEdge, type SlotDirection } from '../../rule/holeEdge.js';
import { leastHoleSpacing } from '../../rule/holeSpacing.js';
import type { LeastDistance } from '../../rule/leastDistance.js';
import { pairDirection } from '../../rule/pairDirection.js';
import { leastWebMm } from '../../rule/pressWeb.js';
import { leastDimensionMm } from '../../tooling/hole.js';
import type { PlacedHoles } from '../checkOnPress.js';
import type { HoleGroup } from '../rowJob.js';

/** What a distance must be at least, what it was held against, and what of it there is at the most. */
export interface Need {
  from: 'center' | 'end radius' | 'rim';
  distance: ClearanceRange;
  leastMm: number;
  rule: string;
}

/** A hole group with what its distances are held against. */
export interface HeldGroup extends PlacedHoles {
  bolt: BoltSize | undefined;
  /** Steel that must be left beside a punched hole; none beside one that is drilled. */
  webMm: number;
}

export const practice = 'press practice: the steel left must be at least the thickness and half the hole';

export function heldGroup(
  placed: PlacedHoles,
  { unit, code }: { unit: LengthUnit; code: EdgeCode },
): HeldGroup {
  const { group, place, process } = placed;
  const { thicknessMm } = place;
  const webMm =
    process.made === 'drill' ? 0 : leastWebMm({ thicknessMm, holeDimensionMm: leastDimensionMm(group.hole) });
  return { ...placed, bolt: boltOf(group, unit, code), webMm };
}

/** The bolt of the row, or the one whose standard hole this is; none where the row says that it is no bolt hole. */
function boltOf({ bolt, noBolt, hole }: HoleGroup, unit: LengthUnit, code: EdgeCode): BoltSize | undefined {
  if (noBolt) return undefined;
  if (bolt || hole.shape !== 'round') return bolt;
  return boltOfHole({ diameterMm: hole.diameterMm, unit, code: code === 'EN' ? 'EN' : 'AISC' });
}

/** What a hole needs to an edge: by the code, and by press practice. */
export function edgeNeeds(
  held: HeldGroup,
  hole: PlacedHole,
  edge: Edge,
  { rim, center, endRadius }: HoleToEdge,
  code: EdgeCode,
): Need[] {
  const kind = kindOf(held.group, edge);
  if (kind === 'none') return [];
  const byPractice: Need = { from: 'rim', distance: rim, leastMm: held.webMm, rule: practice };
  const { bolt } = held;
  if (held.group.noBolt || (!bolt && code !== 'EN')) return [byPractice];
  const known = leastHoleEdge({
    ...(bolt ? { bolt } : {}),
    hole: held.group.hole,
    slotDirection: slotDirection(hole, edge),
    edge: kind,
    code,
  });
  const fromEnd = known.known && known.measuredFrom === 'end radius center';
  const byCode: Need = {
    from: fromEnd ? 'end radius' : 'center',
    distance: fromEnd ? endRadius : center,
    leastMm: leastOf(known),
    rule: `${code}, ${kind} edge${bolt ? `, bolt ${bolt.name}` : ''}`,
  };
  return [byCode, byPractice];
}

/** The kind of an edge for a group: what the row says of its long edges and ends, else what made the edge. */
function kindOf({ edgeKind, endKind }: HoleGroup, { cause, kind }: Edge): EdgeKind | 'none' {
  switch (cause.is) {
    case 'bottom edge':
    case 'top edge':
    case 'toe':
      return edgeKind ?? kind;
    case 'left end':
    case 'right end':
    case 'miter left':
    case 'miter right':
      return endKind ?? kind;
    default:
      return kind;
  }
}

/** How a slot lies to an edge; along it where both run the same way. */
function slotDirection({ shape }: PlacedHole, { from, to }: Edge): SlotDirection {
  const [start, end] = shape.core;
  if (!start || !end) return 'towards edge';
  const [sx, sy] = [end.x - start.x, end.y - start.y];
  const [ex, ey] = [to.x - from.x, to.y - from.y];
  const share = Math.abs(sx * ey - sy * ex) / (Math.hypot(sx, sy) * Math.hypot(ex, ey));
  if (share < 1e-9) return 'along edge';
  return share > 1 - 1e-9 ? 'towards edge' : 'oblique';
}

/** What is certain of a least distance: nothing where the rule is not known. */
function leastOf(least: LeastDistance): number {
  return least.known ? least.leastMm : (least.failsUnderMm ?? 0);
}

/** What two holes need between them: by the code, and by press practice. */
export function spacingNeeds(
  [first, second]: readonly [HeldGroup, HeldGroup],
  [a, b]: readonly [PlacedHole, PlacedHole],
  rim: ClearanceRange,
  code: EdgeCode,
): Need[] {
  const webMm = Math.max(first.webMm, second.webMm);
  const byPractice: Need = { from: 'rim', distance: rim, leastMm: webMm, rule: practice };
  const bolts = [first.bolt, second.bolt];
  if (code !== 'EN' && bolts.includes(undefined)) return [byPractice];
  if (first.group.noBolt || second.group.noBolt || a.free || b.free) return [byPractice];
  const direction = pairDirection({
    alongMm: a.center.x - b.center.x,
    acrossMm: a.center.y - b.center.y,
  });
  const bolted = ({ group, bolt }: HeldGroup) => ({ hole: group.hole, ...(bolt ? { bolt } : {}) });
  const known = leastHoleSpacing({ holes: [bolted(first), bolted(second)], direction, code });
  const centersMm = Math.hypot(a.center.x - b.center.x, a.center.y - b.center.y);
  const endsMm = rim.least.distance + a.shape.radius + b.shape.radius;
  const fromEnd = known.known && known.measuredFrom === 'end radius center';
  const distanceMm = fromEnd ? endsMm : centersMm;
  const rule = `${code}${first.bolt ? `, bolt ${first.bolt.name}` : ''}`;
  const byCode: Need = {
    from: fromEnd ? 'end radius' : 'center',
    distance: { least: { distance: distanceMm, at: rim.least.at }, most: distanceMm },
    leastMm: leastOf(known),
    rule,
  };
  const clear =
    known.known && known.clearMm !== undefined
      ? [{ from: 'rim', distance: rim, leastMm: known.clearMm, rule: `${rule}, clear distance` } as const]
      : [];
  return [byCode, ...clear, byPractice];
}
