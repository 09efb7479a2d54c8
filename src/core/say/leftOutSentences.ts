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
    const named = rows.slice(0, mostNamed).map(({ mark, row }) => (mark === '' ? `row ${row}` : mark));
    const more = rows.length > mostNamed ? ` and ${(rows.length - mostNamed).toLocaleString('en')} more` : '';
    return `Not planned: ${named.join(', ')}${more}. ${reason}`;
  });
}

function reasonOf(why: LeftOut): string {
  switch (why.is) {
    case 'plate':
      return 'Plates are cut from sheets, not from bars.';
    case 'no length':
      return 'No length is given.';
    case 'bought':
      return 'Bought as it stands.';
    case 'asked':
      return why.kind === 'fails'
        ? 'Fails on the press; left out as asked.'
        : 'Off press; left out as asked.';
    case 'not read':
      return why.sentence;
  }
}
