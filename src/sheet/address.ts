/*
 * Cells, areas and columns by their letters. This folder is the language of the sheet: what every layer may
 * know of cells, names, tables, values, dates and formula text.
 */

/** A rectangle of cells, zero-based, both ends included. */
export interface Zone {
  top: number;
  left: number;
  bottom: number;
  right: number;
}

export const MAX_ROWS = 1_048_576;
export const MAX_COLUMNS = 16_384;

/** One number for a cell of a sheet. */
export const cellKey = (row: number, column: number) => row * MAX_COLUMNS + column;

/** `AB` for 27. */
export function columnLetters(column: number): string {
  let letters = '';
  for (let n = column + 1; n > 0; n = Math.floor((n - 1) / 26)) {
    letters = String.fromCharCode(65 + ((n - 1) % 26)) + letters;
  }
  return letters;
}

/** 27 for `AB`; letters only. */
export function columnNumber(letters: string): number {
  let n = 0;
  for (let i = 0; i < letters.length; i++) n = n * 26 + (letters.charCodeAt(i) & 31);
  return n - 1;
}

/** `B3` for row 2, column 1. */
export const cellAddress = (row: number, column: number) => columnLetters(column) + String(row + 1);

/** `A1:B3`, or `A1` for a single cell. */
export function zoneAddress(zone: Zone): string {
  const first = cellAddress(zone.top, zone.left);
  const last = cellAddress(zone.bottom, zone.right);
  return first === last ? first : `${first}:${last}`;
}

/** Reads `B3` (no dollar signs) into a key, -1 when it is no address. */
export function parseCell(text: string): { row: number; column: number } | undefined {
  let at = 0;
  let column = 0;
  for (; at < text.length; at++) {
    const c = text.charCodeAt(at) & ~32;
    if (c < 65 || c > 90) break;
    column = column * 26 + c - 64;
  }
  let row = 0;
  const digits = at;
  for (; at < text.length; at++) {
    const c = text.charCodeAt(at);
    if (c < 48 || c > 57) return undefined;
    row = row * 10 + c - 48;
  }
  const valid = column > 0 && column <= MAX_COLUMNS && at > digits && row > 0 && row <= MAX_ROWS;
  return valid ? { row: row - 1, column: column - 1 } : undefined;
}

/** Reads `A1:B3` or `A1`, in any order of corners, dollar signs allowed. */
export function parseZone(text: string): Zone | undefined {
  const [first, last = first] = text.replace(/\$/g, '').split(':', 2);
  const a = parseCell(first as string);
  const b = parseCell(last as string);
  if (!a || !b) return undefined;
  return {
    top: Math.min(a.row, b.row),
    left: Math.min(a.column, b.column),
    bottom: Math.max(a.row, b.row),
    right: Math.max(a.column, b.column),
  };
}

export const zoneHolds = (zone: Zone, row: number, column: number) =>
  row >= zone.top && row <= zone.bottom && column >= zone.left && column <= zone.right;

export const zonesMeet = (a: Zone, b: Zone) =>
  a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;

/** How many cells a zone holds. */
export const zoneSize = (zone: Zone) => (zone.bottom - zone.top + 1) * (zone.right - zone.left + 1);

export const sameZone = (a: Zone, b: Zone) =>
  a.top === b.top && a.left === b.left && a.bottom === b.bottom && a.right === b.right;
