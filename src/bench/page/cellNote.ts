import type { GridBook } from '../book/gridBook.js';
import type { OpenBook } from '../open/openBook.js';
import { sheetId } from '../open/workbookData.js';
import { cellAddress } from '../../sheet/address.js';
import { pageWords } from './gridTexts.js';

/** What is to be known of the selected cell, in a sentence: its error, or why it keeps its value. */
export function cellNote({ book, formulas }: OpenBook): string {
  const { sheetId: id, row, col } = book.getters.getActivePosition();
  const position = { sheetId: id, row, col };
  const place = cellAddress(row, col);
  if (book.isKept(position)) {
    const display = book.formula(position);
    const why = formulas.find(
      (formula) => formula.display === display && formula.kept !== undefined && sheetId(formula.sheet) === id,
    )?.kept;
    return `${place} keeps the value it has in the file. ${why ?? 'It is not calculated here.'}`;
  }
  return errorNote(book, position, place);
}

function errorNote(book: GridBook, position: Parameters<GridBook['isKept']>[0], place: string): string {
  const { type, message } = book.getters.getEvaluatedCell(position);
  const words = message && pageWords(message);
  return type === 'error' && words ? `${place}: ${words}` : '';
}
