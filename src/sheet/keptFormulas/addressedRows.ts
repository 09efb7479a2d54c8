import { writtenCorner } from '../formula/corner.js';
import { type CellsPiece, readPieces } from '../formula/pieces.js';
import { parseStructured } from '../formula/tableReference.js';

/** What a formula names by address, but whole columns: those are the same from every row. */
function addresses(formula: string): CellsPiece[] {
  return readPieces(formula).flatMap((piece) =>
    piece.kind === 'cells' && writtenCorner(piece.first).row !== undefined ? piece : [],
  );
}

/** The sheets whose cells a formula names by address, in lower case. */
export function addressedSheets(formula: string, own: string): string[] {
  return [...new Set(addresses(formula).map(({ sheet }) => (sheet ?? own).toLowerCase()))];
}

/** Whether every address in a formula is of the formula's own row, so that it may move with the row. */
export function namesOnlyItsRow(formula: string, row: number): boolean {
  return addresses(formula).every(
    ({ sheet, first, last = first }) =>
      sheet === undefined &&
      [first, last].map(writtenCorner).every((corner) => corner.fixedRow === '' && corner.row === row),
  );
}

/** The headings that the structured references of a formula name, with the table before them where one is written. */
export function namedHeadings(formula: string): { table: string | undefined; heading: string }[] {
  return readPieces(formula).flatMap((piece) => {
    if (piece.kind !== 'table') return [];
    const { first, last } = parseStructured(piece.bracket.slice(1, -1)) ?? {};
    const headings = [...new Set([first, last])].filter((heading) => heading !== undefined);
    return headings.map((heading) => ({ table: piece.name || undefined, heading }));
  });
}
