import { type Verdict, verdicts } from '../../../core/check/verdict.js';
import { type RowResult, wordOf } from '../../../core/row/rowResult.js';

/** A cell of the strip: a row, or the worst of some rows that stand below each other. */
export interface StripCell {
  row: number;
  rows: number;
  verdict: Verdict;
}

/** More cells than these nobody tells apart. */
export const mostCells = 240;

/** The rows of a list in their order, blank ones left out; of a long list, a cell for the worst of several rows. */
export function stripOf(results: readonly RowResult[]): StripCell[] {
  const rows = results.flatMap((result, row): StripCell[] => {
    const verdict = wordOf(result);
    return verdict === undefined ? [] : [{ row, rows: 1, verdict }];
  });
  const each = Math.ceil(rows.length / mostCells);
  if (each <= 1) return rows;
  return Array.from({ length: Math.ceil(rows.length / each) }, (_, at) =>
    worstOf(rows.slice(at * each, (at + 1) * each)),
  );
}

function worstOf(cells: readonly StripCell[]): StripCell {
  const worst = cells.reduce((a, b) => (verdicts.indexOf(b.verdict) < verdicts.indexOf(a.verdict) ? b : a));
  return { ...worst, rows: cells.length };
}
