import type { OtherRow, OtherRowAt } from '../row/rowKind.js';
import { rowRuns } from './rowRuns.js';

const words: Record<OtherRow, readonly [one: string, many: string]> = {
  total: ['is taken as a total', 'are taken as totals'],
  title: ['is taken as a subhead or note', 'are taken as subheads or notes'],
  headings: ['repeats the headings', 'repeat the headings'],
  units: ['holds units only', 'hold units only'],
  work: ['says work and has no part', 'say work and have no part'],
  note: ['holds nothing in the columns that are read', 'hold nothing in the columns that are read'],
};

/** What a row is that is no part: `is taken as a total`. */
export const otherRowWords = (kind: OtherRow): string => words[kind][0];

/** Which rows are no parts: what they are taken for and what is not done with them, a sentence for each kind. */
export function otherRowSentences(
  rows: readonly OtherRowAt[],
  outcome: 'not checked' | 'not planned' | 'not added up' | 'no card' = 'not checked',
): string[] {
  return (Object.keys(words) as OtherRow[]).flatMap((kind) => {
    const own = rows.filter(({ is }) => is === kind).map(({ row }) => row);
    if (own.length === 0) return [];
    const [one, many] = words[kind];
    return own.length === 1
      ? `Row ${own[0]} ${one}: ${outcome}.`
      : `Rows ${rowRuns(own)} ${many}: ${outcome}.`;
  });
}
