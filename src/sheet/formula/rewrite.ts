import { readPieces, type CellsPiece, type NamePiece, type PlainPiece, type TablePiece } from './pieces.js';

/** What becomes of the pieces of a formula; what is not named stays as it is written. */
export interface FormulaVisitor {
  cells?(piece: CellsPiece): string;
  table?(piece: TablePiece): string;
  name?(piece: NamePiece): string;
  call?(piece: PlainPiece): string;
}

/** A formula with some of its pieces written anew. Texts, operators, numbers and white space always stay. */
export function rewriteFormula(formula: string, visitor: FormulaVisitor): string {
  return readPieces(formula)
    .map((piece) => {
      switch (piece.kind) {
        case 'cells':
          return visitor.cells?.(piece) ?? piece.text;
        case 'table':
          return visitor.table?.(piece) ?? piece.text;
        case 'name':
          return visitor.name?.(piece) ?? piece.text;
        case 'call':
          return visitor.call?.(piece) ?? piece.text;
        default:
          return piece.text;
      }
    })
    .join('');
}
