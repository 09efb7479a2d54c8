import { bracketEnd } from './tableReference.js';
import { columnLetters, columnNumber, MAX_COLUMNS, MAX_ROWS } from '../address.js';

const cell = /(\$?)([A-Z]{1,3})(\$?)(\d{1,7})(?![\w.(!])/iy;
const columns = /(\$?)([A-Z]{1,3}):(\$?)([A-Z]{1,3})(?![\w.(!$])/iy;
const rows = /(\$?)(\d{1,7}):(\$?)(\d{1,7})(?![\w.!])/y;
const word = /[\w.\\$\u0080-\uffff]+/y;

/** A formula as it reads some rows down and columns right of where it was written: its relative references moved. */
export function moveFormula(text: string, down: number, right: number): string {
  if (down === 0 && right === 0) return text;
  let moved = '';
  for (let at = 0; at < text.length; ) {
    const { piece, end } = pieceAt(text, at, down, right);
    moved += piece;
    at = end;
  }
  return moved;
}

function pieceAt(text: string, at: number, down: number, right: number): { piece: string; end: number } {
  const letter = text[at] ?? '';
  const kept = (end: number) => ({ piece: text.slice(at, end), end });
  if (letter === '"' || letter === "'") return kept(quoteEnd(text, at, letter));
  if (letter === '[') return kept(bracketEnd(text, at) + 1 || text.length);
  const found = matchAt(cell, text, at);
  if (found) {
    const [whole, fixedColumn = '', column = '', fixedRow = '', row = ''] = found;
    return {
      piece: column && `${movedColumn(fixedColumn, column, right)}${movedRow(fixedRow, row, down)}`,
      end: at + whole.length,
    };
  }
  const span = matchAt(columns, text, at);
  if (span) {
    const [whole, fixedFirst = '', first = '', fixedLast = '', last = ''] = span;
    return {
      piece: `${movedColumn(fixedFirst, first, right)}:${movedColumn(fixedLast, last, right)}`,
      end: at + whole.length,
    };
  }
  const lines = matchAt(rows, text, at);
  if (lines) {
    const [whole, fixedFirst = '', first = '', fixedLast = '', last = ''] = lines;
    return {
      piece: `${movedRow(fixedFirst, first, down)}:${movedRow(fixedLast, last, down)}`,
      end: at + whole.length,
    };
  }
  const name = matchAt(word, text, at);
  return kept(at + (name?.[0].length ?? 1));
}

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

function quoteEnd(text: string, start: number, quote: string): number {
  for (let at = start + 1; at < text.length; at++) {
    if (text[at] !== quote) continue;
    if (text[at + 1] !== quote) return at + 1;
    at++;
  }
  return text.length;
}

function movedColumn(fixed: string, letters: string, right: number): string {
  if (fixed !== '') return fixed + letters;
  const column = columnNumber(letters) + right;
  return columnLetters(((column % MAX_COLUMNS) + MAX_COLUMNS) % MAX_COLUMNS);
}

function movedRow(fixed: string, digits: string, down: number): string {
  if (fixed !== '') return fixed + digits;
  const row = Number(digits) - 1 + down;
  return String((((row % MAX_ROWS) + MAX_ROWS) % MAX_ROWS) + 1);
}
