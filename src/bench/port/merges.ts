import type { Area } from '../../workbook/area.js';
import type { Arrangement } from '../../workbook/reading.js';
import type { ActionOf, MergeState } from '../../workbook/writeHost.js';
import type { GridBook } from '../book/gridBook.js';
import type { Dispatch } from '../engine/oneCommand.js';
import { mergeAgain } from '../engine/mergeAgain.js';
import { refuseFailed } from './refuseFailed.js';
import { areaOf, sheetIdFor, where, zoneOf } from './gridPlaces.js';

/** What is merged and hidden in an area of the grid. */
export function arrangementOf(area: Area, book: GridBook): Arrangement {
  const { getters } = book;
  const sheetId = sheetIdFor(book, area.sheet);
  const rows = Array.from({ length: area.rows }, (_, at) => area.row + at);
  return {
    merged: getters.getMergesInZone(sheetId, zoneOf(area)).map((zone) => areaOf(area.sheet, zone)),
    hidden: rows.filter((row) => row < getters.getNumberRows(sheetId) && getters.isRowHidden(sheetId, row)),
  };
}

export function mergeStateOf(area: Area, book: GridBook): Omit<MergeState, 'contents' | 'formats'> {
  const first = { sheetId: sheetIdFor(book, area.sheet), row: area.row, col: area.column };
  const merge = book.getters.getMerge(first);
  const zone = zoneOf(area);
  const isMerged =
    merge?.top === zone.top &&
    merge.left === zone.left &&
    merge.bottom === zone.bottom &&
    merge.right === zone.right;
  return { isMerged, isCentered: book.getters.getCellStyle(first).align === 'center' };
}

/**
 * The grid centers no text across cells: it then stands in the first, and begins there, since text in the middle of one
 * cell runs on over those at both sides of it.
 */
export function unmerge({ area, isCentered }: ActionOf<'unmerge'>, book: GridBook, dispatch: Dispatch): void {
  const sheetId = sheetIdFor(book, area.sheet);
  refuseFailed(
    dispatch('REMOVE_MERGE', { sheetId, target: [zoneOf(area)] }),
    `${where(area)} stayed merged.`,
  );
  if (isCentered) alignFirst(area, 'left', book, dispatch);
}

/** Merges again what was merged. */
export function merge({ area, isCentered }: ActionOf<'merge'>, book: GridBook, dispatch: Dispatch): void {
  const sheetId = sheetIdFor(book, area.sheet);
  if (isCentered) alignFirst(area, 'center', book, dispatch);
  const styles = stylesOf(area, sheetId, book);
  refuseFailed(mergeAgain(dispatch, sheetId, zoneOf(area)), `${where(area)} was not merged again.`);
  for (const each of styles) dispatch('UPDATE_CELL', each);
}

/** Where the text of an area stands in its first cell. */
function alignFirst(
  { sheet, row, column }: Area,
  align: 'left' | 'center',
  book: GridBook,
  dispatch: Dispatch,
): void {
  const position = { sheetId: sheetIdFor(book, sheet), row, col: column };
  const style = { ...book.getters.getCellStyle(position), align };
  dispatch('UPDATE_CELL', { ...position, style });
}

/** Merged cells take the look of the first: theirs is given back to them. */
function stylesOf({ row, column, rows, columns }: Area, sheetId: string, { getters }: GridBook) {
  return Array.from({ length: rows * columns }, (_, at) => {
    const position = { sheetId, row: row + Math.floor(at / columns), col: column + (at % columns) };
    return { ...position, style: getters.getCell(position)?.style ?? null };
  });
}
