import type { CellValue } from '../../../core/quantity/cellValue.js';
import { isBlank } from '../../../core/quantity/cellValue.js';
import { type Area, overlap } from '../../../workbook/area.js';
import type { Workbook } from '../../../workbook/port.js';
import type { Table } from '../../../workbook/reading.js';
import type { ShopState } from '../../shared/shopState.js';
import { checkHeadings } from '../../shared/checkedLists.js';
import { where } from '../../shared/change/describeStep.js';
import { fieldOf } from './columnMatch.js';

/** Where a list of parts stands: in a table, or in cells. */
export type ListSource = { key: string; title: string; area: Area } & (
  | { table: Table }
  | { table?: undefined }
);

/** The lists that can be checked: the tables that are not the shop's own, and the selected cells. */
export async function listSources(
  workbook: Workbook,
  shop: ShopState,
): Promise<{ sources: ListSource[]; first: string }> {
  const [tables, selection] = await Promise.all([workbook.tables(), workbook.selection()]);
  const own = shop.kind === 'ready' ? Object.values(shop.tables).map(({ area }) => area) : [];
  const lists = tables.filter(({ area }) => !own.some((each) => overlap(each, area)));
  const sources: ListSource[] = lists.map((table) => ({
    key: `table ${table.name}`,
    title: `Table ${table.name}`,
    area: withoutTotals(table),
    table,
  }));
  const [selected] = selection;
  const inTable = selected && sources.find(({ area }) => overlap(area, selected));
  const cells = selected && !inTable ? await cellsFrom(workbook, selected, tables) : undefined;
  const all = cells ? [...sources, cells] : sources;
  const checked = sources.find(({ table }) => table?.headings.includes(checkHeadings.verdict));
  return { sources: all, first: (inTable ?? cells ?? checked ?? sources[0])?.key ?? '' };
}

function withoutTotals({ area, hasTotals }: Table): Area {
  return hasTotals ? { ...area, rows: area.rows - 1 } : area;
}

/** The selected cells; of one selected cell, all that its sheet holds. Nothing where a table stands in the way. */
async function cellsFrom(
  workbook: Workbook,
  selected: Area,
  tables: readonly Table[],
): Promise<ListSource | undefined> {
  const [used] = await workbook.read([{ usedOf: selected.sheet }], ['values']);
  if (!used || used.area.rows < 2) return undefined;
  const single = selected.rows === 1 && selected.columns === 1;
  const area = single ? used.area : within(selected, used.area);
  if (!area || area.rows < 2 || tables.some((table) => overlap(table.area, area))) return undefined;
  return { key: 'cells', title: `${single ? 'Sheet' : 'Selected cells'} ${where(area)}`, area };
}

/** The part of a selection that holds something: whole columns end where the sheet does. */
function within(a: Area, b: Area): Area | undefined {
  if (!overlap(a, b)) return undefined;
  const row = Math.max(a.row, b.row);
  const column = Math.max(a.column, b.column);
  const rows = Math.min(a.row + a.rows, b.row + b.rows) - row;
  return { ...a, row, column, rows, columns: Math.min(a.column + a.columns, b.column + b.columns) - column };
}

const headingRowsTried = 15;

/** The row, from 0, that most likely holds the headings: the one with the most that a check reads. */
export function headingRowOf(rows: readonly (readonly CellValue[])[]): number {
  const known = rows
    .slice(0, headingRowsTried)
    .map((row) => row.filter((cell) => fieldOf(String(cell ?? ''))).length);
  const most = Math.max(...known, 0);
  const firstFilled = rows.findIndex((row) => row.filter((cell) => !isBlank(cell)).length > 1);
  return most > 0 ? known.indexOf(most) : Math.max(0, firstFilled);
}
