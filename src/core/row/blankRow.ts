import type { CellValue } from '../quantity/cellValue.js';
import type { Headings } from './headings/readHeadings.js';
import { rowKindOf } from './rowKind.js';

/** Whether a row is no part: blank, a total, a title, a note, or headings once more. */
export function isBlankRow(cells: readonly CellValue[], headings: Headings): boolean {
  return rowKindOf(cells, headings) !== 'part';
}
