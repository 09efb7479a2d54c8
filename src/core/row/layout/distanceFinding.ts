import type { RowFinding } from '../../check/rowFact.js';
import type { DistanceFact, DistanceKind, OpenCell } from '../../check/rowFact.js';
import type { Verdict } from '../../check/verdict.js';
import type { CauseKind } from '../../part/outline.js';
import type { LaidGroup } from './layGroup.js';

const verdictOf: Record<DistanceKind, Verdict> = {
  'edge by code': 'Edge short',
  'edge by practice': 'Edge short',
  heel: 'Edge short',
  'spacing by code': 'Holes too close',
  'clear distance by code': 'Holes too close',
  'spacing by practice': 'Holes too close',
  'between cuts': 'Edge short',
  'hole to bend': 'Edge short',
  flange: 'Edge short',
};

/** A distance of the drawing as a finding, with the cells that would settle one that is open. */
export function distanceFinding(
  { groups }: { groups: readonly LaidGroup[] },
  fact: DistanceFact,
  outcome: 'held' | 'failed' | 'open',
): RowFinding {
  const hole = fact.between.find((thing) => thing.is === 'hole');
  const verdict = outcome === 'held' ? 'OK' : outcome === 'failed' ? verdictOf[fact.kind] : 'OK so far';
  if (outcome === 'open') fact.missing = missingOf(fact, laidOf(fact, groups));
  return Object.assign(fact, hole ? { outcome, verdict, group: hole.group } : { outcome, verdict });
}

/** The groups whose holes the distance is between. */
function laidOf({ between }: DistanceFact, groups: readonly LaidGroup[]): LaidGroup[] {
  return between.flatMap(
    (thing) => (thing.is === 'hole' ? groups.find(({ index }) => index === thing.group) : undefined) ?? [],
  );
}

function missingOf({ given, basis, between }: DistanceFact, laid: readonly LaidGroup[]): OpenCell[] {
  const cells: OpenCell[] = [];
  const add = (cell: string, group?: number) => {
    if (!cells.some((each) => each.cell === cell && each.group === group)) {
      cells.push(group === undefined ? { cell } : { cell, group });
    }
  };
  if (given.least !== given.most) {
    for (const { missing, index } of laid) for (const field of missing) add(field, index);
    return cells;
  }
  if (basis?.boltRead || basis?.unknown === 'no bolt') for (const { index } of laid) add('Bolt', index);
  const edge = between.find((thing) => thing.is === 'edge');
  if (basis?.edgeRead && edge) add(isEnd(edge.cause.is) ? 'End kind' : 'Edge kind', laid[0]?.index);
  return cells;
}

function isEnd(cause: CauseKind): boolean {
  return cause.includes('end') || cause.startsWith('miter');
}
