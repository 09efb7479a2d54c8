import { type CellValue, isBlank } from '../../core/quantity/cellValue.js';
import { isStockTable, stockColumns, stockTableNames } from '../../core/shop/readStock.js';
import { nameKey } from '../../core/shop/table.js';
import type { Workbook } from '../../workbook/port.js';
import type { Step } from '../../workbook/step.js';
import type { ShopTable } from '../shared/shopState.js';
import type { ReadyShop } from '../shop/sheet/readyShop.js';
import { appendRows, columnAt } from '../shop/sheet/tableCells.js';

export const stockHeadings = stockColumns.map(({ name }) => name);

/** The Stock table as it stands in the workbook; undefined where there is none. */
export async function readStockTable(workbook: Workbook): Promise<ShopTable | undefined> {
  const found = (await workbook.tables()).find(({ name }) => isStockTable(name));
  if (!found) return undefined;
  const { name: table } = found;
  const [headings, data] = await workbook.read(
    [
      { table, part: 'headings' },
      { table, part: 'data' },
    ],
    ['values'],
  );
  if (!headings || !data) return undefined;
  const values = [...headings.values, ...data.values];
  return { area: { ...headings.area, rows: values.length }, values, table };
}

/** A row of the Stock table as it is typed, by the headings. */
export type StockLine = readonly string[];

/** Steps that put rows into the Stock table, or make it on the sheet of the shop; or why it cannot be done. */
export async function addStockLines(
  workbook: Workbook,
  shop: ReadyShop,
  table: ShopTable | undefined,
  lines: readonly StockLine[],
): Promise<readonly Step[] | string> {
  if (!table) return newStockTable(workbook, shop, lines);
  const missing = stockHeadings.find(
    (heading, at) => columnAt(table, heading) < 0 && lines.some((line) => !isBlank(line[at]?.trim() ?? null)),
  );
  if (missing !== undefined) return `The table has no column ${missing}. Add it on the sheet first.`;
  const rows = lines.map((line) =>
    (table.values[0] ?? []).map((heading): CellValue => {
      const at = stockHeadings.findIndex((each) => nameKey(each) === nameKey(heading));
      return line[at]?.trim() || null;
    }),
  );
  const blank = table.values.findIndex((cells, at) => at > 0 && cells.every((cell) => isBlank(cell)));
  if (blank < 0 || rows.length > 1) return appendRows(workbook, table, rows);
  const area = { ...table.area, row: table.area.row + blank, rows: 1 };
  return [{ kind: 'cells', area, contents: rows, formats: rows.map((row) => row.map(() => '@')) }];
}

/** A new table on the sheet of the shop, right of all that stands there. */
async function newStockTable(
  workbook: Workbook,
  { tables }: ReadyShop,
  lines: readonly StockLine[],
): Promise<readonly Step[] | string> {
  const { sheet } = tables.presses.area;
  const [[used], known, names] = await Promise.all([
    workbook.read([{ usedOf: sheet }], ['values']),
    workbook.tables(),
    workbook.names(),
  ]);
  const taken = [...known, ...names].map((each) => nameKey(each.name));
  const name = stockTableNames.find((each) => !taken.includes(nameKey(each)));
  if (name === undefined || !used)
    return `Make a table named ${stockTableNames[0]} with the headings ${stockHeadings.join(', ')} on the sheet.`;
  const contents = [
    stockHeadings,
    ...lines.map((line) => stockHeadings.map((_, at) => line[at]?.trim() || null)),
  ];
  const area = {
    sheet,
    row: tables.settings?.area.row ?? tables.presses.area.row,
    column: used.area.column + used.area.columns + 1,
    rows: contents.length,
    columns: stockHeadings.length,
  };
  return [
    { kind: 'cells', area, contents, formats: contents.map((row) => row.map(() => '@')) },
    { kind: 'table', name, area },
  ];
}
