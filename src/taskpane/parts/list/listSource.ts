import { isStockTable } from '../../../core/shop/readStock.js';
import { type Area, overlap } from '../../../workbook/area.js';
import type { Workbook } from '../../../workbook/port.js';
import type { Table } from '../../../workbook/reading.js';
import { checkHeadings } from '../../shared/checkedLists.js';
import type { ShopState } from '../../shared/shopState.js';
import { type CellList, selectedList } from './selectedList.js';

/** Where a list of parts stands: in a table, or in cells. */
export type ListSource = CellList & ({ table: Table } | { table?: undefined });

/** The lists of a workbook that can be checked. */
export interface ListSources {
  sources: ListSource[];
  /** The key of the list to begin with: the one that is selected, else one that is checked already. */
  first: string;
  /** Why the selected cells are no list; undefined where they are one. */
  refusal?: string;
}

/** The tables that are not the shop's own, and the list in the selected cells or around the selected cell. */
export async function listSources(workbook: Workbook, shop: ShopState): Promise<ListSources> {
  const [tables, selection] = await Promise.all([workbook.tables(), workbook.selection()]);
  const own = shop.kind === 'ready' ? Object.values(shop.tables).map(({ area }) => area) : [];
  const lists = tables.filter(
    ({ name, area }) => !own.some((each) => overlap(each, area)) && !isStockTable(name),
  );
  const sources: (ListSource & { table: Table })[] = lists.map((table) => ({
    key: `table ${table.name}`,
    title: `Table ${table.name}`,
    area: withoutTotals(table),
    table,
  }));
  const [selected] = selection;
  const inTable = selected && sources.find(({ table }) => overlap(table.area, selected));
  const cells = selected && !inTable ? await selectedList(workbook, selected, tables) : undefined;
  const checked = sources.find(({ table }) => table.headings.includes(checkHeadings.verdict));
  const refused = typeof cells === 'string';
  const all = cells && !refused ? [...sources, cells] : sources;
  const first = (inTable ?? (refused ? undefined : cells) ?? checked ?? sources[0])?.key ?? '';
  return { sources: all, first, ...(refused && { refusal: cells }) };
}

function withoutTotals({ area, hasTotals }: Table): Area {
  return hasTotals ? { ...area, rows: area.rows - 1 } : area;
}
