import type { CellValue } from '../../../core/quantity/cellValue.js';
import { nameKey } from '../../../core/shop/table.js';
import { cellOf, overlap } from '../../../workbook/area.js';
import { MAX_ROWS } from '../../../sheet/address.js';
import type { Workbook } from '../../../workbook/port.js';
import type { Step } from '../../../workbook/step.js';
import type { ShopTable } from '../../shared/shopState.js';

/** The column under a heading, or -1. */
export function columnAt({ values }: ShopTable, heading: string): number {
  return values[0]?.findIndex((cell) => nameKey(cell) === nameKey(heading)) ?? -1;
}

/** The row, from 1 below the headings, whose first-named column says a name; or -1. */
export function rowAt(table: ShopTable, heading: string, name: string): number {
  const column = columnAt(table, heading);
  return table.values.findIndex((row, at) => at > 0 && nameKey(row[column]) === nameKey(name));
}

/** What was typed, as it is written: a plain number stays a number where the cell held one. */
export function cellContent(text: string, before: CellValue | undefined): CellValue {
  const typed = text.trim();
  if (typed === '') return null;
  return typeof before === 'number' && /^\d+(?:\.\d+)?$/.test(typed) ? Number(typed) : typed;
}

/** A step that writes one cell of a table. */
export function writeCell(table: ShopTable, row: number, column: number, text: string): Step {
  const content = cellContent(text, table.values[row]?.[column]);
  return { kind: 'cells', area: cellOf(table.area, row, column), contents: [[content]] };
}

/** Steps that put rows under a table and let it span them. Refuses by returning why where there is no room. */
export async function appendRows(
  workbook: Workbook,
  table: ShopTable,
  rows: readonly (readonly CellValue[])[],
): Promise<Step[] | string> {
  const { area, table: name } = table;
  if (name === undefined)
    return 'These cells are no table: add the rows on the sheet and widen the SHOP formula.';
  if (area.row + area.rows + rows.length > MAX_ROWS) return 'The sheet ends here.';
  const below = { ...area, row: area.row + area.rows, rows: rows.length };
  const [held] = await workbook.read([below], ['values']);
  const filled = held?.values.some((row) => row.some((cell) => cell !== null && cell !== '')) ?? false;
  if (filled) return 'The cells below the table are filled: make room on the sheet first.';
  const formats = rows.map((row) => row.map(() => '@'));
  return [
    { kind: 'cells', area: below, contents: rows, formats },
    { kind: 'resize', table: name, area: { ...area, rows: area.rows + rows.length } },
  ];
}

/** Steps that add a column to the right of a table: into free cells where there are some, else by moving others. */
export async function appendColumn(
  workbook: Workbook,
  table: ShopTable,
  heading: string,
  contents: readonly CellValue[],
): Promise<Step[] | string> {
  const { area, table: name } = table;
  if (name === undefined)
    return 'These cells are no table: add the column on the sheet and widen the SHOP formula.';
  const beside = { ...area, column: area.column + area.columns, columns: 1 };
  const [[held], tables] = await Promise.all([workbook.read([beside], ['values']), workbook.tables()]);
  const free =
    (held?.values.every(([cell]) => cell === null || cell === '') ?? false) &&
    !tables.some((other) => overlap(other.area, beside));
  if (!free) return [{ kind: 'column', table: name, heading, contents, format: '@' }];
  const cells = [heading, ...contents];
  return [
    { kind: 'cells', area: beside, contents: cells.map((cell) => [cell]), formats: cells.map(() => ['@']) },
    { kind: 'resize', table: name, area: { ...area, columns: area.columns + 1 } },
  ];
}
