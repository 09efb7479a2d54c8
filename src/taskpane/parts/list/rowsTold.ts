import type { RowResult } from '../../../core/row/rowResult.js';
import { hiddenRowSentences } from '../../../core/say/hiddenRows.js';
import { otherRowSentences } from '../../../core/say/otherRows.js';
import { downSentences } from './mergedCells.js';
import type { ListRead } from './listRead.js';

/** What is to be known of rows of a checked list, beside their verdicts: sentences with the numbers of the sheet. */
export function rowsTold({ area, arrangement }: ListRead, results: readonly RowResult[]): string[] {
  const first = area.row + 2;
  const hidden = new Set(arrangement?.hidden.map((row) => row + 1));
  const parts = results.flatMap((result, at) => (result.blank ? [] : first + at));
  const others = results.flatMap((result, at) =>
    result.blank && result.is ? { row: first + at, is: result.is } : [],
  );
  const merged = arrangement?.merged.filter(({ row }) => row > area.row) ?? [];
  return [
    ...hiddenRowSentences(
      parts.filter((row) => hidden.has(row)),
      'checked',
    ),
    ...otherRowSentences(others),
    ...downSentences(merged),
  ];
}
