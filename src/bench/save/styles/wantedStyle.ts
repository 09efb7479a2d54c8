import type { CellPosition } from '@odoo/o-spreadsheet';
import { cellLook, type GivenLook, type OpenBook } from '../../open/openBook.js';
import { withUsual } from '../../open/cellLook.js';
import type { AddedStyles } from './addedStyles.js';

/**
 * The number of the style that a cell gets in the file.
 *
 * @param given what the grid was given for the cell of the file
 * @param usual the style of its row, or column
 */
export function wantedStyle(
  { book, styles }: OpenBook,
  position: CellPosition,
  given: GivenLook | undefined,
  usual: number,
  added: AddedStyles,
): number {
  const { shown, look } = cellLook(book, position);
  if (given && given.shown === shown) return added.changed(given.style, given.look, look);
  if (shown !== undefined) return added.changed(shown, styles[shown] ?? {}, look);
  // A cell without a style of the file, or whose style was cleared, looks as usual but for what it was given.
  const base = given ? 0 : usual;
  const usualLook = styles[base] ?? {};
  return added.changed(base, usualLook, withUsual(look, book.getters.getCell(position)?.style, usualLook));
}
