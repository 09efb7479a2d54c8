import { type CellValue, meant } from '../quantity/cellValue.js';
import { rowCells } from './headings/joinedColumns.js';
import type { Headings } from './headings/readHeadings.js';

/** Blank: nothing in any column that is read, or a subtotal, a row of totals without a section. */
export function isBlankRow(given: readonly CellValue[], headings: Headings): boolean {
  const { fields, groups } = headings;
  const cells = rowCells(given, headings);
  if (meant(cells[fields.section?.at ?? -1]) !== null) return false;
  const columns = [fields, ...groups].flatMap((each) => Object.values(each));
  if (columns.every((column) => meant(cells[column.at]) === null)) return true;
  return cells.some(
    (cell) => typeof cell === 'string' && /^\s*(?:(?:sub-?|grand )?totals?|sum)\b/i.test(cell),
  );
}
