import type { LeftOut, LeftRow } from '../stock/list/stockJob.js';

/** So many rows are named; the others are counted. */
const mostNamed = 6;

/** Why rows are not planned, a sentence for each reason with the marks of its rows. */
export function leftOutSentences(left: readonly LeftRow[]): string[] {
  const reasons = new Map<string, LeftRow[]>();
  for (const row of left) {
    const key = reasonOf(row.why);
    reasons.set(key, [...(reasons.get(key) ?? []), row]);
  }
  return [...reasons].map(([reason, rows]) => {
    const count = rows.length === 1 ? '1 row' : `${rows.length.toLocaleString('en')} rows`;
    const named = rows.slice(0, mostNamed).map(({ mark, row }) => (mark === '' ? `row ${row}` : mark));
    const more = rows.length > mostNamed ? ` and ${rows.length - mostNamed} more` : '';
    return `Not planned: ${count}, ${reason}: ${named.join(', ')}${more}.`;
  });
}

function reasonOf(why: LeftOut): string {
  switch (why.is) {
    case 'plate':
      return 'plates, which are cut from sheets and not from bars';
    case 'no length':
      return 'without a length';
    case 'bought':
      return 'bought as they are';
    case 'asked':
      return why.kind === 'fails' ? 'which fail on the press' : 'which are Off press';
    case 'not read':
      return `which cannot be read (${why.sentence.replace(/\.$/, '')})`;
  }
}
