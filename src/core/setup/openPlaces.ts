import type { PlacedHole } from '../part/part.js';
import type { Layouts } from '../row/layout/layoutOf.js';

/**
 * Which holes a row does not place: those that may lie elsewhere, and those of groups whose leg, or the end they are
 * measured from, is left to choose.
 */
export function openPlaces({ choices }: Layouts): (hole: PlacedHole) => boolean {
  const open = new Set(
    choices.filter(({ cell }) => cell === 'Leg' || cell === 'End').map(({ group }) => group),
  );
  return ({ free, group }) => free !== undefined || open.has(group);
}
