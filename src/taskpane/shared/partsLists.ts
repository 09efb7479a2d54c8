import type { CellValue } from '../../core/quantity/cellValue.js';
import { type Area, overlap } from '../../workbook/area.js';
import type { Workbook } from '../../workbook/port.js';
import type { Table } from '../../workbook/reading.js';
import { isPartsList } from './isPartsList.js';
import type { ShopState } from './shopState.js';

/** A list of parts that is a table: its headings, and its rows with the area they fill. */
export interface PartsList {
  name: string;
  headings: readonly string[];
  values: readonly (readonly CellValue[])[];
  area: Area;
  /** Rows of the sheet, from 0, that are hidden or filtered out. */
  hidden: readonly number[];
}

type Ready = Extract<ShopState, { kind: 'ready' }>;

/** The tables that are parts lists; those of the shop are none. */
export async function partsTables(workbook: Workbook, { tables: shopTables }: Ready): Promise<Table[]> {
  const own = Object.values(shopTables).map(({ area }) => area);
  return (await workbook.tables()).filter(
    ({ name, area, headings }) => !own.some((each) => overlap(each, area)) && isPartsList(headings, name),
  );
}

/** Every parts list of the workbook that is a table, with its cells. */
export async function partsLists(
  workbook: Workbook,
  shop: Ready,
  signal: AbortSignal | undefined,
): Promise<PartsList[]> {
  const tables = await partsTables(workbook, shop);
  const read = await workbook.read(
    tables.map(({ name }) => ({ table: name, part: 'data' }) as const),
    ['values'],
    { signal },
  );
  const arranged = await workbook.arrangement(read.map(({ area }) => area));
  return read.map(({ values, area }, at) => ({
    name: tables[at]?.name ?? '',
    headings: tables[at]?.headings ?? [],
    values,
    area,
    hidden: arranged[at]?.hidden ?? [],
  }));
}
