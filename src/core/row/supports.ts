import type { Finding } from '../check/finding.js';
import { limitOf, withinLimit } from '../press/limit.js';
import type { Press } from '../press/press.js';
import type { Working } from '../working/working.js';
import type { ReadyRow } from './job/readyRow.js';

/** Whether the supports of a press carry the part: its length and its mass. */
export function supportFindings(
  press: Press,
  { lengthMm, massKg, typed }: ReadyRow,
  working?: Working,
): Finding[] {
  if (lengthMm === undefined) return [withoutLength(press)];
  const as = typed?.length === undefined ? {} : { typed: typed.length };
  const length = withinLimit(
    press,
    { item: 'longestBar', sized: { is: 'part', ...as }, given: lengthMm },
    working,
  );
  if (massKg === undefined) return [length];
  return [length, withinLimit(press, { item: 'heaviestBar', sized: { is: 'mass' }, given: massKg }, working)];
}

/** Without a length a part may be too long or too heavy, unless the press has no such limit. */
function withoutLength(press: Press): Finding {
  const limits = (['longestBar', 'heaviestBar'] as const).map((item) => ({
    item,
    limit: limitOf(press, item),
  }));
  const finite = limits.find(({ limit }) => typeof limit !== 'number' || Number.isFinite(limit));
  if (!finite) {
    const fact = { rule: 'press limit', item: 'longestBar', sized: { is: 'part' }, given: 0 } as const;
    return { ...fact, outcome: 'held', verdict: 'OK', press: press.name };
  }
  return {
    rule: 'blank cell',
    outcome: 'open',
    verdict: 'Not checked',
    press: press.name,
    cell: { cell: 'Length' },
    unchecked: 'longest bar',
    item: finite.item,
  };
}
