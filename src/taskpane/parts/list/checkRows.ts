import type { CellValue } from '../../../core/quantity/cellValue.js';
import { checkRow } from '../../../core/row/checkRow.js';
import { readHeadings } from '../../../core/row/headings/readHeadings.js';
import type { RowResult } from '../../../core/row/rowResult.js';
import type { Shop } from '../../../core/shop/readShop.js';
import type { LongWork } from '../../../workbook/longWork.js';
import { inSlices } from '../../shared/inSlices.js';

/** Checks rows in slices; undefined when it was stopped. */
export function checkRows(
  headings: readonly string[],
  rows: readonly (readonly CellValue[])[],
  shop: Shop,
  work: LongWork,
): Promise<RowResult[] | undefined> {
  const read = readHeadings(headings);
  return inSlices(rows, (row) => checkRow(row, read, shop), work);
}
