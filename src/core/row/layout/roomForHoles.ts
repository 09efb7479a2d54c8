import type { CodeBasis, RowFinding } from '../../check/rowFact.js';
import { mostPoints } from '../../part/mostPoints.js';
import type { Face, PlacedHole } from '../../part/part.js';
import type { EdgeCode } from '../../rule/edgeDistance.js';
import { leastDimensionMm } from '../../tooling/hole.js';
import { edgeByCode } from './edgeDistances.js';
import type { HeldLayout } from './edgeFindings.js';
import { edgeKindsOf } from './edgeKindsOf.js';
import type { HeldGroup } from './heldGroup.js';
import { spacingByCode } from './holeDistances.js';
import type { LaidGroup } from './layGroup.js';

/**
 * Whether so many holes have room on a part, whose spaces the row does not give: each at least the pitch of the code or of
 * press practice from the next, beside the holes that are placed, and as far from the ends and edges as either asks.
 */
export function roomForHoles(layout: HeldLayout, laid: LaidGroup, face: Face): RowFinding[] {
  const group = layout.held.get(laid.index);
  if (!group || laid.rigid || laid.holes.length < 2) return [];
  const [first] = laid.holes;
  const oneLine = laid.holes.every(
    ({ center, free }) => center.y === first?.center.y && (!free || free.y0 === free.y1),
  );
  const { pitchMm, basis } = leastPitch(group, layout.code, oneLine);
  const marginMm = leastMarginMm(layout, group, face);
  const xs = face.outline.edges.map(({ from }) => from.x);
  const alongMm = roomOf(laid.holes, 'x', Math.min(...xs) + marginMm, Math.max(...xs) - marginMm);
  const heelMm = leastDimensionMm(group.group.hole) / 2;
  const acrossMm = roomOf(laid.holes, 'y', group.face.heel ? heelMm : marginMm, face.widthMm - marginMm);
  const most = mostPoints(alongMm, oneLine ? 0 : acrossMm, pitchMm);
  const count = laid.holes.length;
  const fact = {
    rule: 'room',
    group: laid.index,
    count,
    most,
    pitchMm,
    ...(basis ? { basis } : {}),
  } as const;
  return count <= most
    ? [{ ...fact, outcome: 'held', verdict: 'OK' }]
    : [{ ...fact, outcome: 'failed', verdict: 'Holes too close' }];
}

/** What is certain of the distance from center to center; with the basis of the code where that asks for the most. */
function leastPitch(
  group: HeldGroup,
  code: EdgeCode,
  oneLine: boolean,
): { pitchMm: number; basis?: CodeBasis } {
  const holeMm = leastDimensionMm(group.group.hole);
  const byPractice = { pitchMm: holeMm + group.webMm };
  if (group.bolt.is !== 'given') return byPractice;
  const directions = oneLine ? (['along'] as const) : (['along', 'across'] as const);
  const limits = directions.map((direction) => spacingByCode([group, group], direction, true, code));
  const pitches = limits.map(({ limit, clear, fromEnd, basis }) => ({
    pitchMm: Math.max(fromEnd ? 0 : limit.least, clear ? holeMm + clear.least : 0),
    basis,
  }));
  const byCode = pitches.reduce((least, each) => (each.pitchMm < least.pitchMm ? each : least));
  return byCode.pitchMm > byPractice.pitchMm ? byCode : byPractice;
}

/** From the center of a hole to any free edge at least: by press practice, and what is certain of the code. */
function leastMarginMm({ row, code }: HeldLayout, group: HeldGroup, { outline }: Face): number {
  const byPractice = leastDimensionMm(group.group.hole) / 2 + group.webMm;
  const byCode = outline.edges.flatMap((edge) => {
    const kinds = edgeKindsOf(row, group.group, edge);
    if (!kinds) return [];
    const limit = edgeByCode(group, 'along edge', kinds, code);
    return [limit && !limit.fromEnd ? limit.limit.least : 0];
  });
  return Math.max(byPractice, byCode.length > 0 ? Math.min(...byCode) : 0);
}

/** The stretch that the centers of holes may lie in: between those that are placed, the others within the margins. */
function roomOf(holes: readonly PlacedHole[], axis: 'x' | 'y', leastMm: number, mostMm: number): number {
  const ends = holes.map(({ center, free }) => {
    if (!free) return [center[axis], center[axis]] as const;
    const [low, high] = axis === 'x' ? [free.x0, free.x1] : [free.y0, free.y1];
    if (low === high) return [center[axis], center[axis]] as const;
    return [Math.max(center[axis] + low, leastMm), Math.min(center[axis] + high, mostMm)] as const;
  });
  return Math.max(...ends.map(([, high]) => high)) - Math.min(...ends.map(([low]) => low));
}
