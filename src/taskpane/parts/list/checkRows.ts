import type { CellValue } from '../../../core/quantity/cellValue.js';
import { checkRow } from '../../../core/row/checkRow.js';
import { readHeadings } from '../../../core/row/readHeadings.js';
import type { RowResult } from '../../../core/row/rowResult.js';
import type { Shop } from '../../../core/shop/readShop.js';
import type { LongWork } from '../../../workbook/longWork.js';

const sliceRows = 200;

/** Checks rows in slices, so that the pane stays alive and can be told to stop; undefined when it was. */
export async function checkRows(
  headings: readonly string[],
  rows: readonly (readonly CellValue[])[],
  shop: Shop,
  { signal, progress }: LongWork,
): Promise<RowResult[] | undefined> {
  const read = readHeadings(headings);
  const results: RowResult[] = [];
  for (let from = 0; from < rows.length; from += sliceRows) {
    if (signal?.aborted) return undefined;
    for (const row of rows.slice(from, from + sliceRows)) results.push(checkRow(row, read, shop));
    progress?.(results.length, rows.length);
    await new Promise((resolve) => setTimeout(resolve));
  }
  return results;
}
