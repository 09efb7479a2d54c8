import { rowRuns } from './rowRuns.js';

/** What is done with hidden rows, in one sentence with their numbers on the sheet; none where no row is hidden. */
export function hiddenRowSentences(
  rows: readonly number[],
  done: 'checked' | 'planned' | 'in the report' | 'left out',
): string[] {
  if (rows.length === 0) return [];
  const [what, are] =
    rows.length === 1 ? ['1 hidden row', 'is'] : [`${rows.length.toLocaleString('en')} hidden rows`, 'are'];
  return [`${what} ${are} ${done}${done === 'left out' ? '' : ' too'}: ${rowRuns(rows)}.`];
}
