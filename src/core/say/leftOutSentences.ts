import { leftOutWords } from '../stock/list/planWords.js';
import type { LeftRow } from '../stock/list/stockJob.js';

/** So many rows are named; the others are counted. */
const mostNamed = 6;

/** Why rows are not planned, a sentence for each reason with the marks of its rows. */
export function leftOutSentences(left: readonly LeftRow[]): string[] {
  const reasons = new Map<string, LeftRow[]>();
  for (const row of left) {
    const key = leftOutWords(row.why);
    reasons.set(key, [...(reasons.get(key) ?? []), row]);
  }
  return [...reasons].map(([reason, rows]) => {
    const named = rows.slice(0, mostNamed).map(({ mark, row }) => (mark === '' ? `row ${row}` : mark));
    const more = rows.length > mostNamed ? ` and ${(rows.length - mostNamed).toLocaleString('en')} more` : '';
    return `Not planned: ${named.join(', ')}${more}. ${reason}`;
  });
}
