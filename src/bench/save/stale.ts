import { cellAddress, sheetPrefix } from '../../xlsx';
import { same, type OpenBook } from '../open/openBook';
import { sheetId } from '../open/workbookData';

/** Says which formulas keep a value though what they read has changed. */
export function staleSentence({ book, workbook, formulas }: OpenBook): string[] {
  const changed = (sheet: number, row: number, column: number): boolean => {
    const cells = workbook.sheets[sheet]?.cells;
    const was = cells?.values[cells.index.get(row * 16_384 + column) ?? -1] ?? null;
    return !same(was, book.storedValue({ sheetId: sheetId(sheet), row, col: column }));
  };
  const stale = formulas.filter(
    ({ sheet, row, column, kept, references }) =>
      kept !== undefined &&
      book.getters.tryGetSheetName(sheetId(sheet)) !== undefined &&
      book.isKept({ sheetId: sheetId(sheet), row, col: column }) &&
      references.some(({ sheet: on, zone }) => {
        if (book.getters.tryGetSheetName(sheetId(on)) === undefined) return true;
        const bottom = Math.min(zone.bottom, book.getters.getNumberRows(sheetId(on)) - 1);
        const right = Math.min(zone.right, book.getters.getNumberCols(sheetId(on)) - 1);
        for (let r = zone.top; r <= bottom; r++)
          for (let c = zone.left; c <= right; c++) if (changed(on, r, c)) return true;
        return false;
      }),
  );
  const [first] = stale;
  if (!first) return [];
  const place = `${sheetPrefix(workbook.sheets[first.sheet]?.name ?? '')}!${cellAddress(first.row, first.column)}`;
  const which = stale.length === 1 ? `${place} keeps` : `${place} and ${stale.length - 1} more keep`;
  return [`${which} an old value: the formula is not calculated here, though what it reads has changed.`];
}
