import { columnLetters, columnNumber, MAX_COLUMNS, MAX_ROWS } from '../sheet/address.js';
import { quotedSheet, unquotedSheet } from '../sheet/names.js';
import { WorkbookError } from './workbookError.js';

/** A rectangle of cells on one sheet; rows and columns count from 0. */
export interface Area {
  sheet: string;
  row: number;
  column: number;
  rows: number;
  columns: number;
}

/** The address of an area without its sheet: `B3:D9`, `B3` for a single cell. */
export function cellAddress({ row, column, rows, columns }: Area): string {
  const from = `${columnLetters(column)}${row + 1}`;
  const to = `${columnLetters(column + columns - 1)}${row + rows}`;
  return from === to ? from : `${from}:${to}`;
}

/** The address as formulas write it: `'Parts list'!$B$3:$D$9`. */
export function absoluteAddress(area: Area): string {
  const absolute = cellAddress(area).replaceAll(/([A-Z]+)(\d+)/g, '$$$1$$$2');
  return `${quotedSheet(area.sheet)}!${absolute}`;
}

/** The areas of an address as hosts report it: `A1`, `Parts!B2:C9`, `5:7`, `C:C`, several with commas. */
export function readAddresses(address: string, sheet: string): Area[] {
  const parts = address.match(/(?:'(?:[^']|'')*'|[^',])+/g) ?? [];
  return parts.map((part) => readAddress(part, sheet));
}

function readAddress(address: string, sheet: string): Area {
  const bang = address.lastIndexOf('!');
  const cells = address.slice(bang + 1).replaceAll('$', '');
  const match = /^([A-Z]{1,3})?(\d{1,7})?(?::(?=.)([A-Z]{1,3})?(\d{1,7})?)?$/.exec(cells);
  if (!match || cells === '')
    throw new WorkbookError(
      'failed',
      `The spreadsheet named cells that cannot be read: ${cells.slice(0, 40)}.`,
    );
  const [, left, top, right = left, bottom = top] = match;
  const column = left === undefined ? 0 : columnNumber(left);
  const row = top === undefined ? 0 : Number(top) - 1;
  return {
    sheet: bang < 0 ? sheet : unquotedSheet(address.slice(0, bang)),
    row,
    column,
    rows: (bottom === undefined ? MAX_ROWS : Number(bottom)) - row,
    columns: (right === undefined ? MAX_COLUMNS : columnNumber(right) + 1) - column,
  };
}

export function sameArea(a: Area, b: Area): boolean {
  return absoluteAddress(a) === absoluteAddress(b);
}

export function overlap(a: Area, b: Area): boolean {
  return (
    a.sheet === b.sheet &&
    a.row < b.row + b.rows &&
    b.row < a.row + a.rows &&
    a.column < b.column + b.columns &&
    b.column < a.column + a.columns
  );
}

/** The single cell at a place inside an area. */
export function cellOf(area: Area, row: number, column: number): Area {
  return { sheet: area.sheet, row: area.row + row, column: area.column + column, rows: 1, columns: 1 };
}

/** The same value in every cell of an area. */
export function matrix<Value>({ rows, columns }: Area, value: Value): Value[][] {
  return Array.from({ length: rows }, () => Array.from({ length: columns }, () => value));
}
