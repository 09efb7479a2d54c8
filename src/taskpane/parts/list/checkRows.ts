import type { CellValue } from '../../../core/quantity/cellValue.js';
import { checkRow } from '../../../core/row/checkRow.js';
import { readHeadings } from '../../../core/row/headings/readHeadings.js';
import type { RowResult } from '../../../core/row/rowResult.js';
import type { Shop } from '../../../core/shop/readShop.js';
import type { LongWork } from '../../../workbook/longWork.js';
import { inSlices } from '../../shared/inSlices.js';
import { reasonOf } from './failGroups.js';

/** What the rows of lists came to, by their headings and cells, for each shop. */
const checked = new WeakMap<Shop, Map<string, Map<string, RowResult>>>();
const listsKept = 4;

/** Checks rows in slices, those that were not checked before; undefined when it was stopped. */
export async function checkRows(
  headings: readonly string[],
  rows: readonly (readonly CellValue[])[],
  shop: Shop,
  work: LongWork,
): Promise<RowResult[] | undefined> {
  const read = readHeadings(headings);
  const lists = checked.get(shop) ?? new Map<string, Map<string, RowResult>>();
  checked.set(shop, lists);
  const list = JSON.stringify(headings);
  const before = lists.get(list);
  const now = new Map<string, RowResult>();
  const resultOf = (row: readonly CellValue[]): RowResult => {
    const key = JSON.stringify(row);
    const result = now.get(key) ?? before?.get(key) ?? checkRow(row, read, shop);
    now.set(key, result);
    // Said when the list is drawn, the reasons of all rows would hold up the pane.
    reasonOf(result, shop.unit);
    return result;
  };
  const results = await inSlices(rows, resultOf, work);
  // What is no longer in the list is forgotten with the list before.
  lists.delete(list);
  if (lists.size >= listsKept) lists.delete([...lists.keys()][0] as string);
  lists.set(list, results ? now : new Map([...(before ?? []), ...now]));
  return results;
}
