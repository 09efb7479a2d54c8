import { markOf, rowText, sizeOf, takenColumns } from './anchor.js';
import { type ListedPlace, PlaceNotFound, quotedRow } from './listedPlace.js';
import { rowsOfTable } from './matchRows.js';
import { cellAddress } from '../address.js';
import { moveFormula } from '../formula/moveFormula.js';
import { namedHeadings, namesOnlyItsRow } from './addressedRows.js';
import { sameName } from '../names.js';
import type { SheetCells } from './sheetCells.js';

/*
 * A values copy keeps its formulas as a list. Here the place of each is found again, whatever was inserted,
 * deleted or sorted meanwhile.
 */

/** Where a formula goes now, and as what; undefined where its row was deleted. */
export type FoundPlace = { row: number; column: number; formula: string } | undefined;

/**
 * Where formulas of a values copy go, by table, heading and what is typed in their rows, whatever was inserted,
 * deleted or sorted since. Throws `PlaceNotFound` where that cannot be told, or where a formula names by address what
 * has moved: a formula never goes to a wrong row.
 */
export function findPlaces(listed: readonly ListedPlace[], sheets: readonly SheetCells[]): FoundPlace[] {
  const rows = new Map<ListedPlace, number | undefined>();
  const columns = new Map<ListedPlace, number>();
  for (const name of new Set(listed.map(({ sheet }) => sheet))) {
    const sheet = sheets.find((each) => sameName(each.name, name));
    if (!sheet) throw new PlaceNotFound(`there is no sheet "${name}".`);
    const own = listed.filter((each) => each.sheet === name);
    const free = own.filter(({ anchor }) => anchor.table === undefined);
    const taken = takenColumns(own);
    for (const each of free) {
      rows.set(each, freeRow(sheet, each, taken.get(each.row) ?? new Set()));
      columns.set(each, each.column);
    }
    const tables = new Set(own.flatMap(({ anchor }) => anchor.table ?? []));
    for (const table of tables)
      rowsOfTable(
        sheet,
        table,
        own.filter(({ anchor }) => anchor.table === table),
        { rows, columns },
      );
  }
  refuseSharedCells(listed, rows, columns);
  const moved = movedSheets(listed, rows, columns);
  return listed.map((each) => {
    const [row, column] = [rows.get(each), columns.get(each) ?? each.column];
    return row === undefined
      ? undefined
      : { row, column, formula: formulaThere(each, row, column, sheets, moved) };
  });
}

/** The row of a formula outside tables. */
function freeRow(sheet: SheetCells, place: ListedPlace, without: ReadonlySet<number>): number {
  const { row, column, anchor, value } = place;
  const textOf = (at: number) => rowText(sheet, at, without);
  const shows = (at: number) => (sheet.value(at, column) ?? '') === (value ?? '');
  // Rows where nothing is typed are all alike: only the value tells which of them it was.
  const isBlank = anchor.row === '';
  const isSame = (at: number) => textOf(at) === anchor.row && (!isBlank || shows(at));
  if (isSame(row)) return row;
  const rowsWith = (holds: (at: number) => boolean) =>
    Array.from({ length: sheet.rows }, (_, at) => at).filter(holds);
  const same = isBlank && (value ?? '') === '' ? [] : rowsWith(isSame);
  const mark = markOf(anchor.row);
  const marked = same.length > 0 || mark === '' ? same : rowsWith((at) => markOf(textOf(at)) === mark);
  const [found, another] = marked;
  if (found === undefined || another !== undefined) throw notFound(place);
  return found;
}

const notFound = ({ sheet, row, column, anchor }: ListedPlace) =>
  new PlaceNotFound(
    `the row of ${sheet}!${cellAddress(row, column)} is not found: it held ${quotedRow(anchor.row)}.`,
  );

/** Two rows that held the same, of which one is left: whose formula stands there cannot be told. */
function refuseSharedCells(
  listed: readonly ListedPlace[],
  rows: ReadonlyMap<ListedPlace, number | undefined>,
  columns: ReadonlyMap<ListedPlace, number>,
): void {
  const taken = new Set<string>();
  for (const each of listed) {
    const row = rows.get(each);
    if (row === undefined) continue;
    const key = `${each.sheet}:${row}:${columns.get(each) ?? each.column}`;
    if (taken.has(key)) throw notFound(each);
    taken.add(key);
  }
}

/** The sheets, in lower case, on which a formula's row or column is not where it was. */
function movedSheets(
  listed: readonly ListedPlace[],
  rows: ReadonlyMap<ListedPlace, number | undefined>,
  columns: ReadonlyMap<ListedPlace, number>,
): Set<string> {
  const moved = listed.filter((each) => rows.get(each) !== each.row || columns.get(each) !== each.column);
  return new Set(moved.map(({ sheet }) => sheet.toLowerCase()));
}

/** The formula as it reads at its new place, where that can be told. */
function formulaThere(
  { sheet, row, column, formula, anchor }: ListedPlace,
  toRow: number,
  toColumn: number,
  sheets: readonly SheetCells[],
  moved: ReadonlySet<string>,
): string {
  refuseLostHeadings(formula, anchor.table, sheets);
  if (anchor.sizes === '') return formula;
  if (namesOnlyItsRow(formula, row) && toColumn === column) return moveFormula(formula, toRow - row, 0);
  const still = anchor.sizes.split('; ').every((size) => {
    const name = size.slice(0, size.lastIndexOf(' ')).toLowerCase();
    return !moved.has(name) && sheets.some((each) => sizeOf(each) === size);
  });
  if (still && toRow === row && toColumn === column) return formula;
  throw new PlaceNotFound(
    `the formula of ${sheet}!${cellAddress(row, column)} names cells by address, and rows or columns were inserted or deleted there since.`,
  );
}

/** A heading that was renamed would leave a formula that no program can read. */
function refuseLostHeadings(formula: string, own: string | undefined, sheets: readonly SheetCells[]): void {
  const tables = sheets.flatMap((sheet) => sheet.tables);
  for (const { table = own ?? '', heading } of namedHeadings(formula)) {
    const found = tables.find(({ name }) => sameName(name, table));
    if (!found || found.headings.some((each) => sameName(each, heading))) continue;
    throw new PlaceNotFound(
      `the formulas name the column "${heading}" of the table ${found.name}, which has none: give it its heading back.`,
    );
  }
}
