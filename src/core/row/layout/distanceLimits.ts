import type { CodeBasis } from '../../check/rowFact.js';
import { exactly, type Range } from '../../check/range.js';
import type { HoleToEdge } from '../../part/edgeClearances.js';
import type { ClearanceRange } from '../../part/clearanceRange.js';
import type { Edge } from '../../part/outline.js';
import type { PlacedHole } from '../../part/part.js';
import { toleranceMm } from '../../part/tolerance.js';
import type { EdgeCode, EdgeKind } from '../../rule/edgeDistance.js';
import { leastHoleEdge, type SlotDirection } from '../../rule/holeEdge.js';
import { leastHoleSpacing } from '../../rule/holeSpacing.js';
import type { LeastDistance } from '../../rule/leastDistance.js';
import { type PairDirection, pairDirection } from '../../rule/pairDirection.js';
import { punchDiagonalMm } from '../../tooling/hole.js';
import { boltOf } from './boltBasis.js';
import type { EdgeKinds } from './edgeKindsOf.js';
import type { CodeLimit, HeldGroup, SpacingLimit } from './heldGroup.js';
import type { Measured } from './measured.js';

/** No code asks for more than this many times the hole, to an edge or to another hole. From the tables built in. */
const mostOfHole = 3;

/** What is certain of a least distance: it fails under one number, and holds from another. */
function rangeOf(least: LeastDistance, holes: readonly HeldGroup[]): Range {
  if (least.known) return exactly(least.leastMm);
  const sizeMm = Math.max(...holes.map(({ group }) => punchDiagonalMm(group.hole)));
  return { least: least.failsUnderMm ?? 0, most: least.holdsFromMm ?? mostOfHole * sizeMm };
}

export function givenOf({ least, most }: ClearanceRange): Range {
  return { least: least.distance, most };
}

/** What a hole needs to an edge: by the code, and by press practice. */
export function edgeDistances(
  held: HeldGroup,
  hole: PlacedHole,
  edge: Edge,
  clearances: HoleToEdge,
  kinds: EdgeKinds,
  code: EdgeCode,
): Measured[] {
  const { rim } = clearances;
  const byPractice: Measured = {
    kind: 'edge by practice',
    from: 'rim',
    given: givenOf(rim),
    limit: exactly(held.webMm),
    at: rim.least.at,
  };
  const direction = slotDirection(hole, edge);
  const limits = held.limits.edge[direction];
  if (!limits.has(kinds)) limits.set(kinds, edgeByCode(held, direction, kinds, code));
  const byCode = limits.get(kinds);
  if (!byCode) return [byPractice];
  const { fromEnd, limit, basis } = byCode;
  const distance = fromEnd ? clearances.endRadius : clearances.center;
  const from = fromEnd ? 'end radius' : 'center';
  return [
    { kind: 'edge by code', from, given: givenOf(distance), limit, at: distance.least.at, basis },
    byPractice,
  ];
}

/**
 * The least edge distance of a code: certain where the row gives the bolt and how the edge is made, else it fails only
 * under what the mildest of them asks, and holds from what is taken. Undefined where no code asks for anything.
 */
function edgeByCode(
  held: HeldGroup,
  direction: SlotDirection,
  kinds: EdgeKinds,
  code: EdgeCode,
): CodeLimit | undefined {
  const { bolt } = held;
  if (bolt.is === 'none') return undefined;
  const size = bolt.is === 'not known' ? {} : { bolt: bolt.bolt };
  const by = (edge: EdgeKind) =>
    leastHoleEdge({ ...size, hole: held.group.hole, slotDirection: direction, edge, code });
  const taken = by(kinds.taken);
  const fails = kinds.possible.map((edge) => rangeOf(by(edge), [held]).least);
  // Where the row does not give the bolt, it may as well be no bolt hole.
  const least = bolt.is === 'given' ? Math.min(...fails) : 0;
  return {
    limit: { least, most: rangeOf(taken, [held]).most },
    fromEnd: taken.known && taken.measuredFrom === 'end radius center',
    basis: {
      ...basisOf(held, code, taken),
      ...(code === 'EN' ? {} : { edge: kinds.taken }),
      ...(kinds.possible.length > 1 && code !== 'EN' ? { edgeRead: true as const } : {}),
    },
  };
}

function basisOf({ bolt }: HeldGroup, code: EdgeCode, least: LeastDistance): CodeBasis {
  return {
    code,
    // EN goes by the hole: a bolt tells only whether it is a bolt hole at all.
    ...(bolt.is === 'read' || (bolt.is === 'given' && code !== 'EN') ? { bolt: bolt.bolt.name } : {}),
    ...(bolt.is === 'read' ? { boltRead: true as const } : {}),
    ...(least.known ? {} : { unknown: least.why }),
    ...(least.source === undefined ? {} : { source: least.source }),
  };
}

/** How a slot lies to an edge; along it where both run the same way. */
function slotDirection({ shape }: PlacedHole, { from, to }: Edge): SlotDirection {
  // Of a round hole the core is one point.
  const start = shape.core[0];
  const end = shape.core[1];
  if (!start || !end) return 'towards edge';
  const [sx, sy] = [end.x - start.x, end.y - start.y];
  const [ex, ey] = [to.x - from.x, to.y - from.y];
  const share = Math.abs(sx * ey - sy * ex) / (Math.hypot(sx, sy) * Math.hypot(ex, ey));
  if (share < 1e-9) return 'along edge';
  return share > 1 - 1e-9 ? 'towards edge' : 'oblique';
}

/** What two holes need between them: by the code, and by press practice. */
export function holeDistances(
  groups: readonly [HeldGroup, HeldGroup],
  holes: readonly [PlacedHole, PlacedHole],
  rim: ClearanceRange,
  code: EdgeCode,
): Measured[] {
  const given = givenOf(rim);
  const at = rim.least.at;
  const webMm = Math.max(groups[0].webMm, groups[1].webMm);
  const byPractice: Measured = { kind: 'spacing by practice', from: 'rim', given, limit: exactly(webMm), at };
  // Holes that run into each other are wrong by any rule: how far they overlap says it all.
  if (rim.most < -toleranceMm) return [byPractice];
  if (groups.some(({ bolt }) => bolt.is === 'none')) return [byPractice];
  const { placed, between } = centersOf(holes);
  // Of holes that are not placed the direction is not known: the largest distance of the code holds.
  const direction = placed ? pairDirection(between) : 'across';
  const limits = groups[0].limits.spacing[placed ? direction : 'open'];
  const known = limits.get(groups[1].limits) ?? spacingByCode(groups, direction, placed, code);
  limits.set(groups[1].limits, known);
  const { fromEnd, limit, clear, basis } = known;
  const byCode: Measured = {
    kind: 'spacing by code',
    from: fromEnd ? 'end radius' : 'center',
    given: fromEnd ? grown(given, holes[0].shape.radius + holes[1].shape.radius) : centerRange(holes),
    limit,
    at: fromEnd ? at : [holes[0].center, holes[1].center],
    basis,
  };
  if (!clear) return [byCode, byPractice];
  return [
    byCode,
    { kind: 'clear distance by code', from: 'rim', given, limit: clear, at, basis },
    byPractice,
  ];
}

/** The least distance of a code between two holes: certain where both are placed and the row gives both bolts. */
function spacingByCode(
  groups: readonly [HeldGroup, HeldGroup],
  direction: PairDirection,
  placed: boolean,
  code: EdgeCode,
): SpacingLimit {
  const bolted = ({ group, bolt: basis }: HeldGroup) => {
    const bolt = boltOf(basis);
    return { hole: group.hole, ...(bolt ? { bolt } : {}) };
  };
  const least = leastHoleSpacing({ holes: [bolted(groups[0]), bolted(groups[1])], direction, code });
  const range = rangeOf(least, groups);
  const certain = placed && groups.every(({ bolt }) => bolt.is === 'given');
  const between = (mm: Range): Range => (certain ? mm : { least: 0, most: mm.most });
  return {
    limit: between(range),
    fromEnd: least.known && least.measuredFrom === 'end radius center',
    basis: basisOf(largerBolt(groups), code, least),
    ...(least.known && least.clearMm !== undefined ? { clear: between(exactly(least.clearMm)) } : {}),
  };
}

function largerBolt([a, b]: readonly [HeldGroup, HeldGroup]): HeldGroup {
  const size = ({ bolt }: HeldGroup) => boltOf(bolt)?.diameterMm ?? 0;
  return size(a) >= size(b) ? a : b;
}

function grown({ least, most }: Range, mm: number): Range {
  return { least: least + mm, most: most + mm };
}

function centersOf([a, b]: readonly [PlacedHole, PlacedHole]) {
  return {
    placed: !a.free && !b.free,
    between: { alongMm: a.center.x - b.center.x, acrossMm: a.center.y - b.center.y },
  };
}

/** From center to center, wherever the two lie. */
function centerRange([a, b]: readonly [PlacedHole, PlacedHole]): Range {
  const none = { x0: 0, x1: 0, y0: 0, y1: 0 };
  const [of, to] = [a.free ?? none, b.free ?? none];
  const x = apart(a.center.x - b.center.x, of.x0 - to.x1, of.x1 - to.x0);
  const y = apart(a.center.y - b.center.y, of.y0 - to.y1, of.y1 - to.y0);
  return { least: Math.hypot(x.least, y.least), most: Math.hypot(x.most, y.most) };
}

function apart(mm: number, less: number, more: number): Range {
  const [low, high] = [mm + less, mm + more];
  const least = low > 0 ? low : high < 0 ? -high : 0;
  return { least, most: Math.max(Math.abs(low), Math.abs(high)) };
}
