import type { OtherRow } from '../row/rowKind.js';
import { rowRuns } from './rowRuns.js';

const words: Record<OtherRow, readonly [one: string, many: string]> = {
  total: ['is taken as a total', 'are taken as totals'],
  title: ['is taken as a subhead or note', 'are taken as subheads or notes'],
  headings: ['repeats the headings', 'repeat the headings'],
  units: ['says units', 'say units'],
  note: ['holds nothing in the columns that are read', 'hold nothing in the columns that are read'],
};

/** A row of the sheet, from 1, that is no part. */
export interface OtherRowAt {
  row: number;
  is: OtherRow;
}

/** Which rows are not checked and what they are taken for, a sentence for each kind. */
export function otherRowSentences(rows: readonly OtherRowAt[]): string[] {
  return (Object.keys(words) as OtherRow[]).flatMap((kind) => {
    const own = rows.filter(({ is }) => is === kind).map(({ row }) => row);
    if (own.length === 0) return [];
    const [one, many] = words[kind];
    return own.length === 1
      ? `Row ${own[0]} ${one}: not checked.`
      : `Rows ${rowRuns(own)} ${many}: not checked.`;
  });
}
