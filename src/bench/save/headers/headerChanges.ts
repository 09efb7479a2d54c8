import { usualColumn, type GivenHeader, type GivenSheet } from '../../open/givenSheet.js';
import { columnCharacters, rowPoints } from '../../open/layoutData.js';
import type { SheetMove } from './sheetMoves.js';
import { withColumns, type ColumnChange } from './columns.js';
import { withRows, type RowChange } from './rows.js';

const newRow: GivenHeader = { size: undefined, hidden: false };
const newColumn: GivenHeader = { size: usualColumn, hidden: false };

/** A sheet's part with the heights and widths that were changed, and what was hidden or shown. */
export function withHeaders(
  xml: string,
  now: GivenSheet,
  given: GivenSheet | undefined,
  move: SheetMove | undefined,
): string {
  const rows = new Map<number, RowChange>();
  now.rows.forEach((row, place) => {
    const origin = move ? move.rows.origin(place) : place;
    const before = (origin === undefined ? undefined : given?.rows[origin]) ?? newRow;
    const change = {
      ...(row.size !== before.size && { height: row.size === undefined ? null : rowPoints(row.size) }),
      ...(row.hidden !== before.hidden && { hidden: row.hidden }),
    };
    if (Object.keys(change).length > 0) rows.set(place, change);
  });
  const columns = new Map<number, ColumnChange>();
  now.columns.forEach((column, place) => {
    const origin = move ? move.columns.origin(place) : place;
    const before = (origin === undefined ? undefined : given?.columns[origin]) ?? newColumn;
    const change = {
      ...(column.size !== before.size && { width: columnCharacters(column.size ?? usualColumn) }),
      ...(column.hidden !== before.hidden && { hidden: column.hidden }),
    };
    if (Object.keys(change).length > 0) columns.set(place, change);
  });
  return withColumns(withRows(xml, rows), columns);
}
