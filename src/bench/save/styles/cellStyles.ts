import type { CellPosition } from '@odoo/o-spreadsheet';
import { cellLook, type GivenLook, type OpenBook } from '../../open/openBook.js';
import { withUsual } from '../../open/cellLook.js';
import type { AddedStyles } from './addedStyles.js';

/** The number of the style that each cell of a sheet gets in the file. */
export class CellStyles {
  /**
   * @param looks what the grid was given, by the cells of the file
   * @param usual what a cell has that the file does not list
   */
  constructor(
    private readonly open: Pick<OpenBook, 'book' | 'styles'>,
    private readonly looks: ReadonlyMap<number, GivenLook>,
    private readonly added: AddedStyles,
    readonly usual: (row: number, column: number) => number,
  ) {}

  /** What the cell has in the file. */
  before(key: number): number | undefined {
    return this.looks.get(key)?.style;
  }

  wanted(position: CellPosition, key: number): number {
    const { shown, look } = cellLook(this.open.book, position);
    const given = this.looks.get(key);
    if (given && given.shown === shown) return this.added.changed(given.style, given.look, look);
    if (shown !== undefined) return this.added.changed(shown, this.open.styles[shown] ?? {}, look);
    // A cell without a style of the file, or whose style was cleared, looks as usual but for what it was given.
    const base = given ? 0 : this.usual(position.row, position.col);
    const usual = this.open.styles[base] ?? {};
    const style = this.open.book.getters.getCell(position)?.style;
    return this.added.changed(base, usual, withUsual(look, style, usual));
  }
}
