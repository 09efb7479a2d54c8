import type { CellPosition } from '@odoo/o-spreadsheet';
import { cellLook, type GivenLook, type OpenBook } from '../../open/openBook.js';
import { withUsual } from '../../open/cellLook.js';
import { usualStyles } from '../headers/usualStyles.js';
import type { AddedStyles } from './addedStyles.js';

/** The number of the style that each cell of a sheet gets in the file. */
export class CellStyles {
  private readonly rowsAndColumns: (row: number, column: number) => number;

  /** @param looks what the grid was given, by the cells as they stand in the file's part */
  constructor(
    private readonly open: Pick<OpenBook, 'book' | 'styles'>,
    xml: string,
    private readonly looks: ReadonlyMap<number, GivenLook>,
    private readonly added: AddedStyles,
  ) {
    this.rowsAndColumns = usualStyles(xml);
  }

  /** What the cell has in the file. */
  before(key: number): number | undefined {
    return this.looks.get(key)?.style;
  }

  /** What a cell has that the file does not list. */
  usual(row: number, column: number): number {
    return this.rowsAndColumns(row, column);
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
