import type { RowFinding } from '../../check/rowFact.js';
import type { Unchecked } from '../../check/rowFact.js';
import type { ReadyRow } from '../job/readyRow.js';

/** Work whose place the row does not give, so that it cannot be checked against the rest of the part. */
export function openWork({ notches, clips, bends, places, lengthMm, miterRad }: ReadyRow): RowFinding[] {
  const open = (cell: string, unchecked: Unchecked, filled = false): RowFinding => ({
    rule: 'blank cell',
    outcome: 'open',
    verdict: 'OK so far',
    cell: { cell },
    unchecked,
    ...(filled ? { partly: true } : {}),
  });
  const other = places.length > 0 || clips !== undefined || miterRad > 0 || bends !== undefined;
  const found: RowFinding[] = [];
  const loose =
    notches && (!notches.at || notches.at.some((at) => at.at === 'edge' && at.fromMm === undefined));
  if (loose && (other || notches.count > 1))
    found.push(open('Notch at', 'notches against the rest', notches.at !== undefined));
  if (bends && !bends.at) found.push(open('Bend at', 'bends against the rest'));
  if (lengthMm === undefined && (other || notches)) found.push(open('Length', 'far end'));
  return found;
}
