import { columnNumber, MAX_COLUMNS, MAX_ROWS, type Zone } from '../../xlsx';

/** How far a formula stands from the cell its text was written for. */
export interface Shift {
  rows: number;
  columns: number;
}

const cell = /^(\$?)([A-Z]{1,3})(\$?)(\d{1,7})$/i;
const column = /^(\$?)([A-Z]{1,3})$/i;
const row = /^(\$?)(\d{1,7})$/;

/** One corner of a reference; an open side is undefined. */
export interface Corner {
  row: number | undefined;
  column: number | undefined;
  /** It moves with the cell the formula stands in. */
  relative: boolean;
}

/** Reads `$B3`, `B` or `3` as a corner, shifted where it is relative; undefined when it is no such word. */
export function readCorner(word: string, shift: Shift): Corner | undefined {
  const asCell = cell.exec(word);
  if (asCell) {
    const [, fixedColumn, letters, fixedRow, digits] = asCell as unknown as [
      string,
      string,
      string,
      string,
      string,
    ];
    return {
      column: columnNumber(letters) + (fixedColumn ? 0 : shift.columns),
      row: Number(digits) - 1 + (fixedRow ? 0 : shift.rows),
      relative: !fixedColumn || !fixedRow,
    };
  }
  const asColumn = column.exec(word);
  if (asColumn) {
    const at = columnNumber(asColumn[2] as string) + (asColumn[1] ? 0 : shift.columns);
    return { column: at, row: undefined, relative: !asColumn[1] };
  }
  const asRow = row.exec(word);
  if (!asRow) return undefined;
  return { row: Number(asRow[2]) - 1 + (asRow[1] ? 0 : shift.rows), column: undefined, relative: !asRow[1] };
}

/** The zone between two corners of the same kind; undefined when they don't pair or leave the sheet. */
export function zoneBetween(a: Corner, b: Corner): Zone | undefined {
  if ((a.row === undefined) !== (b.row === undefined)) return undefined;
  if ((a.column === undefined) !== (b.column === undefined)) return undefined;
  const rows = [a.row ?? 0, b.row ?? MAX_ROWS - 1] as const;
  const columns = [a.column ?? 0, b.column ?? MAX_COLUMNS - 1] as const;
  const zone = {
    top: Math.min(...rows),
    bottom: Math.max(...rows),
    left: Math.min(...columns),
    right: Math.max(...columns),
  };
  const inside = zone.top >= 0 && zone.left >= 0 && zone.bottom < MAX_ROWS && zone.right < MAX_COLUMNS;
  return inside ? zone : undefined;
}
