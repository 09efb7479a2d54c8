import { cannotBeRead } from './tokens.js';
import {
  type CellsPiece,
  type NamePiece,
  type Piece,
  type PlainPiece,
  readPieces,
  type TablePiece,
} from './pieces.js';

/*
 * Nothing else reads formula text: `tokens` splits it, `pieces` puts together what belongs together,
 * `rewriteFormula` lets a visitor change pieces, `parse` makes a tree where a formula is evaluated.
 */

/** What becomes of the pieces of a formula; a kind that is not named stays as it is written. */
export interface FormulaVisitor {
  cells?(piece: CellsPiece): string;
  table?(piece: TablePiece): string;
  name?(piece: NamePiece): string;
  call?(piece: PlainPiece): string;
  text?(piece: PlainPiece): string;
  unreadable?(piece: PlainPiece): string;
  other?(piece: PlainPiece): string;
}

/** For visitors that refuse what no formula has. */
export const refuseUnreadable = ({ text }: PlainPiece): never => {
  throw cannotBeRead(text);
};

/** A formula with some of its pieces written anew. */
export function rewriteFormula(formula: string, visitor: FormulaVisitor): string {
  return rewritePieces(readPieces(formula), visitor);
}

/** The same for a formula that is in pieces already. */
export function rewritePieces(pieces: readonly Piece[], visitor: FormulaVisitor): string {
  return pieces.map((piece) => visited(piece, visitor) ?? piece.text).join('');
}

function visited(piece: Piece, visitor: FormulaVisitor): string | undefined {
  switch (piece.kind) {
    case 'cells':
      return visitor.cells?.(piece);
    case 'table':
      return visitor.table?.(piece);
    case 'name':
      return visitor.name?.(piece);
    default:
      return visitor[piece.kind]?.(piece);
  }
}
