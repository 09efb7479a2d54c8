import { exactly, type Range } from '../../check/range.js';
import type { ClearanceRange } from '../../part/clearanceRange.js';
import type { PlacedHole } from '../../part/part.js';
import { toleranceMm } from '../../part/tolerance.js';
import type { EdgeCode } from '../../rule/edgeDistance.js';
import { leastHoleSpacing } from '../../rule/holeSpacing.js';
import { type PairDirection, pairDirection } from '../../rule/pairDirection.js';
import { boltOf } from './boltBasis.js';
import { basisOf, givenOf, rangeOf } from './codeLimit.js';
import type { HeldGroup, SpacingLimit } from './heldGroup.js';
import type { Measured } from './measured.js';

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
export function spacingByCode(
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
