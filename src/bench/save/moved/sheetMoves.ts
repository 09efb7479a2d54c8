import { MAX_COLUMNS, MAX_ROWS, type Zone } from '../../../sheet/address.js';
import { headerOrigins } from '../../open/headerOrigins.js';
import type { OpenBook } from '../../open/openBook.js';
import { sheetId } from '../../open/workbookData.js';
import { HeaderMap } from './headerMap.js';

/** What became of a sheet of the file. */
export interface SheetMove {
  /** Its name in the file. */
  before: string;
  /** Undefined for a sheet that is gone. */
  name: string | undefined;
  rows: HeaderMap;
  columns: HeaderMap;
}

/** What became of every sheet of the file, in the order of the file. */
export function sheetMoves({ book, workbook, sheets }: OpenBook): SheetMove[] {
  return workbook.sheets.map(({ name }, position) => {
    const id = sheetId(position);
    const given = sheets.get(id);
    return {
      before: name,
      name: book.sheetName(id),
      rows: new HeaderMap(headerOrigins(book.model, id, 'ROW'), given?.rows.length ?? 0, MAX_ROWS),
      columns: new HeaderMap(headerOrigins(book.model, id, 'COL'), given?.columns.length ?? 0, MAX_COLUMNS),
    };
  });
}

export const hasMoved = ({ rows, columns }: SheetMove): boolean => rows.moved || columns.moved;

/** What is left of an area; undefined where nothing is. */
export function movedZone(
  { top, bottom, left, right }: Zone,
  move: Pick<SheetMove, 'rows' | 'columns'>,
): Zone | undefined {
  const rows = move.rows.span(top, bottom);
  const columns = move.columns.span(left, right);
  return rows && columns
    ? { top: rows.first, bottom: rows.last, left: columns.first, right: columns.last }
    : undefined;
}
