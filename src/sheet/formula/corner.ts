import { columnLetters, columnNumber, MAX_COLUMNS, MAX_ROWS, type Zone } from '../address.js';

/** How far a formula stands from the cell its text was written for. */
export interface Shift {
  rows: number;
  columns: number;
}

/** One corner of a reference; an open side is undefined. */
export interface Corner {
  row: number | undefined;
  column: number | undefined;
  /** Its row, or its column, moves with the cell the formula stands in. */
  movesRow: boolean;
  movesColumn: boolean;
}

const DOLLAR = 36;

/** Reads `$B3`, `B` or `3` as a corner, shifted where it is relative; undefined when it is no such word. */
export function readCorner(word: string, shift: Shift): Corner | undefined {
  const { length } = word;
  let at = word.charCodeAt(0) === DOLLAR ? 1 : 0;
  const lettersStart = at;
  let column = 0;
  for (; at < length; at++) {
    const letter = word.charCodeAt(at) & ~32;
    if (letter < 65 || letter > 90 || at - lettersStart === 3) break;
    column = column * 26 + letter - 64;
  }
  const hasColumn = at > lettersStart;
  const fixedColumn = hasColumn && lettersStart === 1;
  const dollar = hasColumn && word.charCodeAt(at) === DOLLAR;
  if (dollar) at++;
  const fixedRow = dollar || (!hasColumn && lettersStart === 1);
  const digitsStart = at;
  let row = 0;
  for (; at < length; at++) {
    const digit = word.charCodeAt(at) - 48;
    if (digit < 0 || digit > 9 || at - digitsStart === 7) return undefined;
    row = row * 10 + digit;
  }
  const hasRow = at > digitsStart;
  if ((!hasRow && dollar) || (!hasRow && !hasColumn)) return undefined;
  return {
    row: hasRow ? row - 1 + (fixedRow ? 0 : shift.rows) : undefined,
    column: hasColumn ? column - 1 + (fixedColumn ? 0 : shift.columns) : undefined,
    movesRow: hasRow && !fixedRow,
    movesColumn: hasColumn && !fixedColumn,
  };
}

/** The zone between two corners of the same kind; undefined when they don't pair or leave the sheet. */
export function zoneBetween(a: Corner, b: Corner): Zone | undefined {
  if ((a.row === undefined) !== (b.row === undefined)) return undefined;
  if ((a.column === undefined) !== (b.column === undefined)) return undefined;
  const rows = [a.row ?? 0, b.row ?? MAX_ROWS - 1] as const;
  const columns = [a.column ?? 0, b.column ?? MAX_COLUMNS - 1] as const;
  const zone = {
    top: Math.min(rows[0], rows[1]),
    bottom: Math.max(rows[0], rows[1]),
    left: Math.min(columns[0], columns[1]),
    right: Math.max(columns[0], columns[1]),
  };
  const inside = zone.top >= 0 && zone.left >= 0 && zone.bottom < MAX_ROWS && zone.right < MAX_COLUMNS;
  return inside ? zone : undefined;
}

/** A corner as it is written, its column and row counted from 0. */
interface WrittenCorner {
  /** A dollar sign, or nothing. */
  fixedColumn: string;
  column: number | undefined;
  fixedRow: string;
  row: number | undefined;
}

const cornerForm = /^(\$?)([A-Z]{1,3})?(\$?)(\d{1,7})?$/i;

/** Reads what `readCorner` knows as a corner. */
export function writtenCorner(text: string): WrittenCorner {
  const [, first = '', letters, second = '', digits] = cornerForm.exec(text) ?? [];
  return {
    // Of a row alone, the only dollar sign is that of the row.
    fixedColumn: letters === undefined ? '' : first,
    column: letters === undefined ? undefined : columnNumber(letters),
    fixedRow: letters === undefined ? first || second : second,
    row: digits === undefined ? undefined : Number(digits) - 1,
  };
}

export function cornerText({ fixedColumn, column, fixedRow, row }: WrittenCorner): string {
  const letters = column === undefined ? '' : fixedColumn + columnLetters(column);
  return letters + (row === undefined ? '' : `${fixedRow}${row + 1}`);
}
