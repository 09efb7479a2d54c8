import { isBlank } from '../../../core/quantity/cellValue.js';
import { type Area, overlap } from '../../../workbook/area.js';
import type { Workbook } from '../../../workbook/port.js';
import type { CellsRead, Table } from '../../../workbook/reading.js';
import { where } from '../../shared/change/describeStep.js';
import { headingRowOf, headingRowsTried } from './headingRow.js';
import { type Box, knownHeadings, listAround, rowsToGap } from './listBounds.js';

/** A list in plain cells. */
export interface CellList {
  key: string;
  title: string;
  area: Area;
}

/** The selected cells, or the list around one selected cell; a sentence where there is none. */
export async function selectedList(
  workbook: Workbook,
  selected: Area,
  tables: readonly Table[],
): Promise<CellList | string> {
  const single = selected.rows === 1 && selected.columns === 1;
  const none = single
    ? `Around ${where(selected)} there is no list: select a cell of one, or all of its cells with the headings.`
    : `${where(selected)} holds no list: it needs a row of headings and a row below them.`;
  const [used] = await workbook.read([{ usedOf: selected.sheet }], ['values']);
  if (!used || used.area.rows < 2) return none;
  const area = single ? around(used, selected, tables) : selectedRows(used, selected);
  if (!area || area.rows < 2) return none;
  const table = tables.find((each) => overlap(each.area, area));
  if (table) return `${where(area)} reaches into the table ${table.name}: select cells of one list only.`;
  return { key: 'cells', title: `${single ? 'Cells' : 'Selected cells'} ${where(area)}`, area };
}

type Used = CellsRead<'values'>;

/** The list around a cell; around a cell with nothing about it, the first list that its sheet holds outside tables. */
function around({ area, values }: Used, selected: Area, tables: readonly Table[]): Area | undefined {
  const walls = tables.filter((table) => table.area.sheet === area.sheet);
  if (walls.some((table) => overlap(table.area, selected))) return undefined;
  const cells = withoutTables({ area, values }, walls);
  const asked = { row: selected.row - area.row, column: selected.column - area.column };
  const found = [asked, firstHeading(cells)].flatMap((cell) =>
    cell ? (listAround(cells, cell.row, cell.column) ?? []) : [],
  );
  const box = found.find((each) => looksLikeList(cells, each));
  return (
    box && {
      sheet: area.sheet,
      row: area.row + box.top,
      column: area.column + box.left,
      rows: box.bottom - box.top + 1,
      columns: box.right - box.left + 1,
    }
  );
}

/** What was read, the cells of tables blank. */
function withoutTables({ area, values }: Used, tables: readonly Table[]): Used['values'] {
  if (tables.length === 0) return values;
  const cells = values.map((row) => [...row]);
  for (const { area: table } of tables) {
    const [top, left] = [table.row - area.row, Math.max(0, table.column - area.column)];
    const right = table.column + table.columns - area.column;
    for (const row of cells.slice(Math.max(0, top), Math.max(0, top + table.rows)))
      row.fill(null, left, Math.max(left, right));
  }
  return cells;
}

const fewest = 3;

/** Headings that are read, or rows enough, one of them with cells enough, to be more than a title and its notes. */
function looksLikeList(cells: Used['values'], { top, left, bottom, right }: Box): boolean {
  if (bottom === top) return false;
  const tried = cells.slice(top, Math.min(bottom + 1, top + headingRowsTried));
  const known = tried.some((row) => knownHeadings(row.slice(left, right + 1)) > 1);
  const filled = tried.some(
    (row) => row.slice(left, right + 1).filter((cell) => !isBlank(cell)).length >= fewest,
  );
  return known || (filled && bottom - top + 1 >= fewest);
}

/** The first cell of the row that most likely holds headings. */
function firstHeading(cells: Used['values']): { row: number; column: number } | undefined {
  const filled = cells.flatMap((row, at) => (row.every(isBlank) ? [] : at));
  const row = filled[headingRowOf(filled.map((at) => cells[at] ?? []))];
  const column = cells[row ?? -1]?.findIndex((cell) => !isBlank(cell)) ?? -1;
  return row === undefined || column < 0 ? undefined : { row, column };
}

/** Selected cells as far as the sheet is used; whole columns end where the list in them does. */
function selectedRows({ area, values }: Used, selected: Area): Area | undefined {
  const held = within(selected, area);
  if (!held || selected.row + selected.rows <= area.row + area.rows) return held;
  const left = held.column - area.column;
  const rows = values.slice(held.row - area.row).map((row) => row.slice(left, left + held.columns));
  const headings = headingRowOf(rows);
  return { ...held, rows: headings + rowsToGap(rows.slice(headings)) };
}

/** The part of a selection that holds something: whole columns end where the sheet does. */
function within(a: Area, b: Area): Area | undefined {
  if (!overlap(a, b)) return undefined;
  const row = Math.max(a.row, b.row);
  const column = Math.max(a.column, b.column);
  const rows = Math.min(a.row + a.rows, b.row + b.rows) - row;
  return { ...a, row, column, rows, columns: Math.min(a.column + a.columns, b.column + b.columns) - column };
}
