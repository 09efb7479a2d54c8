import { stampName } from '../../shared/readShopState.js';
import { columnReference, columnSpan } from '../../../sheet/formula/columnReference.js';

/** The row of LISTCHECK on its sheet, from 1. */
export const listCheckRow = 3;

/** The columns of a table that its checks read: from one heading to another. */
export interface CheckedColumns {
  table: string;
  first: string;
  last: string;
}

/** The check of one row; without an item it shows verdict, share and note side by side. */
export function rowCheckFormula({ table, first, last }: CheckedColumns, item?: string): string {
  const columns = columnSpan(first, last);
  const asked = item === undefined ? '' : `,"${item}"`;
  return `=TONROW.ROWCHECK(${table}[[#Headers],${columns}],${table}[@${columns}],${stampName}${asked})`;
}

/** The checks of a whole list, for a cell on a sheet of its own. */
export function listCheckFormula({ table, first, last }: CheckedColumns, items: string): string {
  return `=TONROW.LISTCHECK(${table}[[#All],${columnSpan(first, last)}],${stampName},"${items}")`;
}

/** What a row of the list takes from the checks of the whole list. */
export function lookUpFormula(
  { table, first }: CheckedColumns,
  { sheet, letter, row }: { sheet: string; letter: string; row: number },
): string {
  const heading = `${table}[[#Headers],[${columnReference(first)}]]`;
  return `=INDEX('${sheet.replaceAll("'", "''")}'!$${letter}:$${letter},ROW()-ROW(${heading})+${row})`;
}
