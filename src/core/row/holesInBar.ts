import { atMost } from '../atMost.js';
import type { Finding } from '../check/finding.js';
import { greatestSideMm } from '../section/greatestSide.js';
import { leastDimensionMm } from '../tooling/hole.js';
import { facesOf } from './job/faces.js';
import { needsPress } from './job/needsPress.js';
import type { ReadyRow } from './job/readyRow.js';

/**
 * Holes in bars, tubes and beams: they are drilled, and their distances are not checked, since these have no flat side that
 * is laid out. One that leaves nothing of the bar fails. Source: geometry.
 */
export function holesInBar(row: ReadyRow): Finding[] {
  const { section, lengthMm = Infinity } = row;
  if (facesOf(section).length > 0) return [];
  const { designation } = section;
  const sizeMm = Math.min(greatestSideMm(section), lengthMm);
  const ending = needsPress(row)
    ? ({ outcome: 'open', verdict: 'OK so far' } as const)
    : ({ outcome: 'not applicable', verdict: 'OK' } as const);
  return row.places.map(({ index, group: { hole } }): Finding => {
    const holeMm = leastDimensionMm(hole);
    if (!atMost(sizeMm, holeMm)) return { rule: 'holes in a bar', ...ending, group: index, designation };
    const fact = { rule: 'hole over the bar', group: index, holeMm, sizeMm, designation } as const;
    return { ...fact, outcome: 'failed', verdict: 'Edge short' };
  });
}
