import type { CellPosition } from '@odoo/o-spreadsheet';
import { cellAddress } from '../../sheet/address.js';
import { sheetPrefix } from '../../sheet/names.js';
import { same, type OpenBook } from '../open/openBook.js';
import { sheetId } from '../open/workbookData.js';
import type { SheetMove } from './moved/sheetMove.js';

/** Says which formulas keep a value though what they read has changed. */
export function staleSentence({ book, workbook, formulas }: OpenBook, moves: readonly SheetMove[]): string[] {
  const changed = (sheet: number, row: number, column: number): boolean => {
    const cells = workbook.sheets[sheet]?.cells;
    const was = cells?.values[cells.index.get(row * 16_384 + column) ?? -1] ?? null;
    const position = placed(sheet, row, column);
    return position ? !same(was, book.storedValue(position)) : was !== null;
  };
  const placed = (sheet: number, row: number, column: number): CellPosition | undefined => {
    const move = moves[sheet];
    const place = move?.name === undefined ? undefined : move.place(row, column);
    return place && { sheetId: sheetId(sheet), ...place };
  };
  const isKept = (position: CellPosition | undefined) => position !== undefined && book.isKept(position);
  const stale = formulas.filter(
    ({ sheet, row, column, kept, references }) =>
      kept !== undefined &&
      isKept(placed(sheet, row, column)) &&
      references.some(({ sheet: on, zone }) => {
        if (moves[on]?.name === undefined) return true;
        const { numberOfRows, numberOfCols } = book.getters.getSheetSize(sheetId(on));
        const bottom = Math.min(zone.bottom, numberOfRows - 1);
        const right = Math.min(zone.right, numberOfCols - 1);
        for (let r = zone.top; r <= bottom; r++)
          for (let c = zone.left; c <= right; c++) if (changed(on, r, c)) return true;
        return false;
      }),
  );
  const [first] = stale;
  if (!first) return [];
  const { row = 0, col = 0 } = placed(first.sheet, first.row, first.column) ?? {};
  const place = `${sheetPrefix(moves[first.sheet]?.name ?? '')}!${cellAddress(row, col)}`;
  const which = stale.length === 1 ? `${place} keeps` : `${place} and ${stale.length - 1} more keep`;
  return [`${which} an old value: the formula is not calculated here, though what it reads has changed.`];
}
