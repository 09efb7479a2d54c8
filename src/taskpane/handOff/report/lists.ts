import type { CellValue } from '../../../core/quantity/cellValue.js';
import { plainText } from '../../../core/quantity/cellValue.js';
import { checkRow } from '../../../core/row/checkRow.js';
import { readHeadings } from '../../../core/row/readHeadings.js';
import { readRow } from '../../../core/row/readRow.js';
import type { RowResult } from '../../../core/row/rowResult.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { overlap } from '../../../workbook/area.js';
import type { LongWork } from '../../../workbook/longWork.js';
import type { Workbook } from '../../../workbook/port.js';
import { isPartsList } from '../../shared/isPartsList.js';
import type { ShopState } from '../../shared/shopState.js';

/** A row of a list with its result. */
export interface ReportRow {
  list: string;
  mark: string;
  /** Row of the sheet, from 1. */
  row: number;
  qty: number;
  result: Extract<RowResult, { blank: false }>;
}

const sliceRows = 200;

/** Every row of every parts list that is a table, checked with the shop as it is now. */
export async function reportRows(
  workbook: Workbook,
  state: Extract<ShopState, { kind: 'ready' }>,
  { signal, progress }: LongWork,
): Promise<ReportRow[]> {
  const own = Object.values(state.tables).map(({ area }) => area);
  const tables = (await workbook.tables()).filter(
    ({ area, headings }) => !own.some((each) => overlap(each, area)) && isPartsList(headings),
  );
  const read = await workbook.read(
    tables.map(({ name }) => ({ table: name, part: 'data' }) as const),
    ['values'],
    { signal },
  );
  const total = read.reduce((sum, { values }) => sum + values.length, 0);
  const rows: ReportRow[] = [];
  let done = 0;
  for (const [at, { name, headings }] of tables.entries()) {
    const { values = [], area } = read[at] ?? {};
    for (let from = 0; from < values.length; from += sliceRows) {
      signal?.throwIfAborted();
      const slice = values.slice(from, from + sliceRows);
      rows.push(
        ...slice.flatMap((cells, down) =>
          rowOf(name, (area?.row ?? 0) + from + down + 1, cells, headings, state.shop),
        ),
      );
      done += slice.length;
      progress?.(done, total);
      await new Promise((resolve) => setTimeout(resolve));
    }
  }
  return rows;
}

function rowOf(
  list: string,
  row: number,
  cells: readonly CellValue[],
  headings: readonly CellValue[],
  shop: Shop,
): ReportRow[] {
  const read = readHeadings(headings);
  const result = checkRow(cells, read, shop);
  if (result.blank) return [];
  const { qty } = readRow(cells, read, shop);
  return [{ list, row, qty, result, mark: plainText(String(cells[read.fields.mark?.at ?? -1] ?? '')) }];
}
