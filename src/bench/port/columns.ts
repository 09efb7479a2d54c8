import type { ActionOf } from '../../workbook/writeHost.js';
import { WorkbookError } from '../../workbook/workbookError.js';
import type { GridBook } from '../book/gridBook.js';
import type { NamedTable } from '../book/tableChanges.js';
import type { Dispatch } from '../engine/oneCommand.js';
import { constantContent } from '../engine/cellContent.js';
import { refuseFailed } from './refuseFailed.js';
import { sameName } from '../../sheet/names.js';
import { tableFor } from './gridPlaces.js';

/** A column of the whole sheet is inserted: everything that reads the cells beside it follows. */
export function addColumn(
  { table: name, heading, position }: ActionOf<'column'>,
  book: GridBook,
  dispatch: Dispatch,
): void {
  const table = tableFor(book, name);
  const { sheetId, zone } = table;
  const last = position > zone.right - zone.left;
  refuseNeighbors(table, zone.left + position - (last ? 1 : 0), book);
  refuseFailed(
    dispatch('ADD_COLUMNS_ROWS', {
      sheetId,
      sheetName: book.getters.getSheetName(sheetId),
      dimension: 'COL',
      base: last ? zone.right : zone.left + position,
      position: last ? 'after' : 'before',
      quantity: 1,
    }),
    `The column "${heading}" was not added.`,
  );
  const now = tableFor(book, name).zone;
  const wanted = { ...zone, right: zone.right + 1 };
  if (now.right !== wanted.right || now.left !== wanted.left)
    refuseFailed(
      dispatch('UPDATE_TABLE', {
        sheetId,
        zone: now,
        newTableRange: book.getters.getRangeDataFromZone(sheetId, wanted),
      }),
      `The table "${name}" did not take the column "${heading}".`,
    );
  const { content } = constantContent(heading, undefined);
  const col = zone.left + position;
  dispatch('UPDATE_CELL', { sheetId, row: zone.top, col, content, format: '' });
  takeBorders(
    { sheetId, col, from: last ? col - 1 : col + 1, rows: [zone.top, zone.bottom] },
    book,
    dispatch,
  );
}

/** A new column has the look of the one it was inserted beside, but for borders, which the grid does not copy. */
function takeBorders(
  {
    sheetId,
    col,
    from,
    rows: [top, bottom],
  }: { sheetId: string; col: number; from: number; rows: [number, number] },
  { getters }: GridBook,
  dispatch: Dispatch,
): void {
  for (let row = top; row <= bottom; row++) {
    const border = getters.getCellBorder({ sheetId, col: from, row });
    if (border) dispatch('SET_BORDER', { sheetId, col, row, border });
  }
}

/** Removes the column from the whole sheet, as it came. */
export function dropColumn(
  { table: name, heading }: ActionOf<'drop column'>,
  book: GridBook,
  dispatch: Dispatch,
): void {
  const table = tableFor(book, name);
  const { sheetId, zone, columns } = table;
  const at = columns.findIndex((column) => sameName(column, heading));
  if (at < 0) throw new WorkbookError('missing', `The table "${name}" has no column "${heading}".`);
  refuseNeighbors(table, zone.left + at, book);
  refuseFailed(
    dispatch('REMOVE_COLUMNS_ROWS', {
      sheetId,
      sheetName: book.getters.getSheetName(sheetId),
      dimension: 'COL',
      elements: [zone.left + at],
    }),
    `The column "${heading}" was not removed.`,
  );
}

function refuseNeighbors({ id, sheetId }: NamedTable, column: number, book: GridBook): void {
  const other = book.tables
    .all()
    .find(
      (table) =>
        table.sheetId === sheetId &&
        table.id !== id &&
        table.zone.left <= column &&
        column <= table.zone.right,
    );
  if (other)
    throw new WorkbookError(
      'not allowed',
      `The table "${other.name}" stands in the same columns: move one of the two.`,
    );
}
