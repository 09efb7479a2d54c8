import { cellKey, MAX_COLUMNS, MAX_ROWS, type Zone } from '../../../sheet/address.js';
import { headerOrigins } from '../../open/headerOrigins.js';
import type { OpenBook } from '../../open/openBook.js';
import { sheetId } from '../../open/workbookData.js';
import { HeaderMap } from './headerMap.js';

/** What became of a sheet of the file. */
export class SheetMove {
  /** @param name undefined for a sheet that is gone */
  constructor(
    readonly before: string,
    readonly name: string | undefined,
    readonly rows = new HeaderMap(undefined, 0, MAX_ROWS),
    readonly columns = new HeaderMap(undefined, 0, MAX_COLUMNS),
  ) {}

  /** Rows or columns are elsewhere or gone. */
  get moved(): boolean {
    return this.rows.moved || this.columns.moved;
  }

  /** Where a cell of the file is now; undefined where it is gone. */
  place(row: number, column: number): { row: number; col: number } | undefined {
    const [r, c] = [this.rows.place(row), this.columns.place(column)];
    return r === undefined || c === undefined ? undefined : { row: r, col: c };
  }

  /** A cell as the file had it, by its key; -1 for a new one. */
  origin(row: number, column: number): number {
    const [r, c] = [this.rows.origin(row), this.columns.origin(column)];
    return r === undefined || c === undefined ? -1 : cellKey(r, c);
  }

  /** What is left of an area; undefined where nothing is. */
  zone({ top, bottom, left, right }: Zone): Zone | undefined {
    const [rows, columns] = [this.rows.span(top, bottom), this.columns.span(left, right)];
    return rows && columns
      ? { top: rows.first, bottom: rows.last, left: columns.first, right: columns.last }
      : undefined;
  }
}

/** What became of every sheet of the file, in the order of the file. */
export function sheetMoves({ book, workbook, sheets }: OpenBook): SheetMove[] {
  return workbook.sheets.map(({ name }, position) => {
    const id = sheetId(position);
    const given = sheets.get(id);
    const rows = new HeaderMap(headerOrigins(book.model, id, 'ROW'), given?.rows.length ?? 0, MAX_ROWS);
    const columns = new HeaderMap(
      headerOrigins(book.model, id, 'COL'),
      given?.columns.length ?? 0,
      MAX_COLUMNS,
    );
    return new SheetMove(name, book.sheetName(id), rows, columns);
  });
}
