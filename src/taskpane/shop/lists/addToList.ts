import { type CellValue, isBlank } from '../../../core/quantity/cellValue.js';
import type { Workbook } from '../../../workbook/port.js';
import type { Step } from '../../../workbook/step.js';
import { splitArguments } from '../../../sheet/formula/splitArguments.js';
import type { ShopTable } from '../../shared/shopState.js';
import type { ReadyShop } from '../sheet/readyShop.js';
import { appendRows, columnAt } from '../sheet/tableCells.js';

const titles = { tools: 'Tools', grades: 'Grades' };

/** Steps that add a row to a list of the shop: into its first blank row, below it, or in a new list. */
export async function addToList(
  workbook: Workbook,
  shop: ReadyShop,
  key: 'tools' | 'grades',
  headings: readonly string[],
  values: readonly string[],
): Promise<readonly Step[] | string> {
  const table = shop.tables[key];
  if (!table) return newList(workbook, shop, key, headings, values);
  const row = (table.values[0] ?? []).map((_, column): CellValue => {
    const at = headings.findIndex((heading) => columnAt(table, heading) === column);
    return values[at]?.trim() || null;
  });
  const unwritten = headings.find((heading, at) => values[at]?.trim() && columnAt(table, heading) < 0);
  if (unwritten !== undefined) return `The table has no column ${unwritten}. Add it on the sheet first.`;
  const blank = table.values.findIndex((cells, at) => at > 0 && cells.every((cell) => isBlank(cell)));
  return blank < 0 ? appendRows(workbook, table, [row]) : [fillRow(table, blank, row)];
}

function fillRow({ area }: ShopTable, row: number, contents: CellValue[]): Step {
  const place = { ...area, row: area.row + row, rows: 1 };
  return { kind: 'cells', area: place, contents: [contents], formats: [contents.map(() => '@')] };
}

/** A new table on the sheet of the shop, right of all that stands there, and the shop cell that takes it. */
async function newList(
  workbook: Workbook,
  { tables, stampArea }: ReadyShop,
  key: 'tools' | 'grades',
  headings: readonly string[],
  values: readonly string[],
): Promise<readonly Step[] | string> {
  const { sheet } = tables.presses.area;
  const [[stamp], [used], known, names] = await Promise.all([
    workbook.read([stampArea], ['formulas']),
    workbook.read([{ usedOf: sheet }], ['values']),
    workbook.tables(),
    workbook.names(),
  ]);
  const taken = [...known, ...names].map((each) => each.name.toLowerCase());
  const name = [titles[key], `Shop${titles[key]}`].find((each) => !taken.includes(each.toLowerCase()));
  const formula = withArgument(stamp?.formulas[0]?.[0] ?? '', key, name ?? '');
  if (!name || !formula || !used)
    return `Make a table with the headings ${headings.join(', ')} on the sheet, and name it in the SHOP formula.`;
  const row = tables.settings?.area.row ?? tables.presses.area.row;
  const area = {
    sheet,
    row,
    column: used.area.column + used.area.columns + 1,
    rows: 2,
    columns: headings.length,
  };
  const contents = [headings, values.map((value) => value.trim() || null)];
  return [
    { kind: 'cells', area, contents, formats: contents.map((cells) => cells.map(() => '@')) },
    { kind: 'table', name, area },
    { kind: 'cells', area: stampArea, contents: [[{ formula }]] },
  ];
}

/** The SHOP formula with a table in an argument that it leaves out. */
function withArgument(formula: string, key: 'tools' | 'grades', table: string): string | undefined {
  const parts = /^(=(?:_xll\.)?TONROW\.SHOP\()(.*)\)$/i.exec(formula);
  if (!parts) return undefined;
  const [, start = '', inside = ''] = parts;
  const places = splitArguments(inside);
  if (!places) return undefined;
  const at = key === 'tools' ? 1 : 2;
  while (places.length <= at) places.push('');
  if (places[at]?.trim() !== '') return undefined;
  places[at] = `${table}[[#Headers],[#Data]]`;
  return `${start}${places.join(',')})`;
}
