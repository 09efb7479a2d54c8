import { exactly } from '../../check/range.js';
import type { HoleToEdge } from '../../part/edgeClearances.js';
import type { Edge } from '../../part/outline.js';
import type { PlacedHole } from '../../part/part.js';
import type { EdgeCode, EdgeKind } from '../../rule/edgeDistance.js';
import { leastHoleEdge, type SlotDirection } from '../../rule/holeEdge.js';
import { basisOf, givenOf, rangeOf } from './codeLimit.js';
import type { EdgeKinds } from './edgeKindsOf.js';
import type { CodeLimit, HeldGroup } from './heldGroup.js';
import type { Measured } from './measured.js';

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
export function edgeByCode(
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
