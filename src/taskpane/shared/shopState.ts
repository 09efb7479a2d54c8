import type { CellValue } from '../../core/quantity/cellValue.js';
import type { Shop } from '../../core/shop/readShop.js';
import type { Area } from '../../workbook/area.js';

export const shopTableNames = ['presses', 'tools', 'grades', 'settings'] as const;
/** The tables of a shop, in the order in which SHOP takes them. */
export type ShopTableName = (typeof shopTableNames)[number];

/** A table of the shop as it stands on the sheet, with its headings; without a total row. */
export interface ShopTable {
  area: Area;
  values: CellValue[][];
  /** Its name, where it is a table and not just cells. */
  table?: string;
}
export type ShopTablesRead = { presses: ShopTable } & Partial<Record<ShopTableName, ShopTable>>;

/** A cell of the shop's tables that cannot be used, and why. */
export interface ShopProblem {
  message: string;
  /** Where it is, where that is known. */
  area?: Area;
  /** By what a row's finding is known to be about this cell; a tool that cannot be read is in no row. */
  refused?: { problem: string; argument?: string };
}

/** What the workbook says of its shop. The sheet is the source: this is a reading, and is read again after every change. */
export type ShopState =
  | { kind: 'loading' }
  /** There is no shop cell. */
  | { kind: 'none' }
  /** The shop cell or the tables it names cannot be read at all. */
  | { kind: 'broken'; message: string; area?: Area }
  | {
      kind: 'ready';
      shop: Shop;
      tables: ShopTablesRead;
      /** Where the shop cell is. */
      stampArea: Area;
      /** What the shop cell shows: another stamp than the shop's own where it has not been calculated since. */
      shown: string;
      problems: ShopProblem[];
      /** The sheet that keeps the formulas, where the workbook is a values copy. */
      keptOn?: string;
    };

/** Whether two readings say the same of the workbook. A host tells of every calculation, and rows checked by one shop are not checked again. */
export function isSameReading(a: ShopState, b: ShopState): boolean {
  return JSON.stringify(readingOf(a)) === JSON.stringify(readingOf(b));
}

/** What was read: the shop and its problems follow from the tables. */
function readingOf(state: ShopState): unknown {
  if (state.kind !== 'ready') return state;
  const { tables, stampArea, shown, keptOn } = state;
  return { tables, stampArea, shown, keptOn };
}
