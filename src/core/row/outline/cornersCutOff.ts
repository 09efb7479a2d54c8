import type { AnySection } from '../../section/section.js';
import type { RowJob } from '../rowJob.js';
import { type ClippedCorner, contourOf, type End, type Ends } from './contour.js';
import { crossesItself } from './crossing.js';
import type { Side } from './place.js';

const corners: { end: End; side: Side }[] = [
  { end: 'far', side: 'operator' },
  { end: 'stop', side: 'operator' },
  { end: 'far', side: 'throat' },
  { end: 'stop', side: 'throat' },
];

/**
 * As many corners as the row counts, square ends first; of an angle the corners at the toe of the leg that lies. None
 * where they do not fit on the part, or in a section no press clips.
 */
export function cornersCutOff(
  { clips }: Pick<RowJob, 'clips'>,
  section: AnySection,
  ends: Ends,
): ClippedCorner[] {
  if (!clips || (section.kind !== 'flat' && section.kind !== 'angle')) return [];
  const mitred = ({ end }: { end: End }) => Number((end === 'stop' ? ends.stopRad : ends.farRad) > 0);
  const possible = corners
    .filter(({ side }) => section.kind === 'flat' || side === 'throat')
    .sort((a, b) => mitred(a) - mitred(b));
  const chosen = possible.slice(0, clips.count).map((corner) => ({ ...corner, ...clips }));
  return crossesItself(contourOf(ends, chosen, [])) ? [] : chosen;
}
