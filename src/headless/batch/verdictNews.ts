import { isVerdict } from '../../functions/row/verdictWords.js';
import { cellAddress } from '../../sheet/address.js';
import { isCellError, sameStored, type StoredValue } from '../../sheet/cellValue.js';
import { sheetPrefix } from '../../sheet/names.js';
import type { Workbook } from '../../xlsx/workbook.js';
import type { VerdictNews } from './fileOutcome.js';
import { rowMarks, shown } from './rowMarks.js';

/** A sheet before and after: the cells with a value, each once, and what stands in them. */
export interface SheetBeforeAfter {
  width: number;
  cells(): Iterable<[row: number, column: number, was: StoredValue, now: StoredValue]>;
  value(row: number, column: number): StoredValue;
}

/** What changed among the verdicts of a workbook. Cells change by their formulas only: what is typed stays. */
export function verdictNews(
  { sheets, tables }: Pick<Workbook, 'sheets' | 'tables'>,
  sheetAt: (position: number) => SheetBeforeAfter | undefined,
): VerdictNews {
  const news: VerdictNews = { changed: [], first: 0 };
  sheets.forEach(({ name }, position) => {
    const sheet = sheetAt(position);
    if (!sheet) return;
    const markAt = rowMarks({
      width: sheet.width,
      value: (row, column) => sheet.value(row, column),
      tables: tables.filter((table) => table.sheet === position && table.headerRows > 0),
    });
    for (const [row, column, was, now] of sheet.cells()) {
      if (sameStored(was, now) || !(isVerdict(was) || isVerdict(now))) continue;
      if (isNothing(was)) news.first++;
      else {
        const cell = `${sheetPrefix(name)}!${cellAddress(row, column)}`;
        news.changed.push({ cell, mark: markAt(row, column), was: shown(was), now: shown(now) });
      }
    }
  });
  return news;
}

/** A program without our functions stores an unknown name where a verdict would be. */
const isNothing = (value: StoredValue) =>
  value === null || value === '' || value === 0 || (isCellError(value) && value.error === '#NAME?');
