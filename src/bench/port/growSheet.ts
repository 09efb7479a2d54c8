import type { Area } from '../../workbook/area.js';
import type { GridBook } from '../book/gridBook.js';
import type { Dispatch } from '../engine/oneCommand.js';
import { sheetIdFor } from './gridPlaces.js';

/** Rows left free below what is written. */
const spareRows = 100;

/**
 * Cells beyond the grid's last row or column: the grid grows. All sheets get the rows, so that a formula on
 * another sheet finds room to spill.
 */
export function growSheet(
  { sheet, row, column, rows, columns }: Area,
  book: GridBook,
  dispatch: Dispatch,
): void {
  const { getters } = book;
  const sheetId = sheetIdFor(book, sheet);
  if (row + rows > getters.getNumberRows(sheetId))
    for (const id of getters.getSheetIds())
      addAtEnd(id, 'ROW', row + rows + spareRows - getters.getNumberRows(id), book, dispatch);
  addAtEnd(sheetId, 'COL', column + columns - getters.getNumberCols(sheetId), book, dispatch);
}

function addAtEnd(
  sheetId: string,
  dimension: 'ROW' | 'COL',
  quantity: number,
  { getters }: GridBook,
  dispatch: Dispatch,
): void {
  if (quantity <= 0) return;
  const has = dimension === 'ROW' ? getters.getNumberRows(sheetId) : getters.getNumberCols(sheetId);
  const sheetName = getters.getSheetName(sheetId);
  dispatch('ADD_COLUMNS_ROWS', { sheetId, sheetName, dimension, base: has - 1, position: 'after', quantity });
}
