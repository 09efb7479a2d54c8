import { MAX_COLUMNS, MAX_ROWS } from '../address.js';
import { cornerText, writtenCorner } from './corner.js';
import { rewriteFormula } from './rewrite.js';

/** A formula as it reads some rows down and columns right of where it was written: its relative references moved. */
export function moveFormula(text: string, down: number, right: number): string {
  if (down === 0 && right === 0) return text;
  const moved = (written: string) => {
    const { fixedColumn, column, fixedRow, row } = writtenCorner(written);
    return cornerText({
      fixedColumn,
      column: column === undefined || fixedColumn !== '' ? column : around(column + right, MAX_COLUMNS),
      fixedRow,
      row: row === undefined || fixedRow !== '' ? row : around(row + down, MAX_ROWS),
    });
  };
  return rewriteFormula(text, {
    cells: ({ prefix, first, last }) =>
      `${prefix}${moved(first)}${last === undefined ? '' : `:${moved(last)}`}`,
  });
}

/** Beyond an edge of the sheet it goes on at the other, as shared formulas do. */
const around = (place: number, count: number) => ((place % count) + count) % count;
