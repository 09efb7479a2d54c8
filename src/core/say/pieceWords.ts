import type { Piece, PieceGap } from '../row/piece.js';

const gaps: Record<PieceGap, string> = {
  'Long side': 'not known: Long side is blank',
  'Miter leg': 'not known: Miter leg is blank',
  'how it lies': 'not known: the section may lie in two ways',
};

/** The shorter edge of a piece in mm, or what leaves it open; undefined where the miters leave no piece. */
export function shortOf(piece: Piece | undefined): number | string | undefined {
  if (!piece || piece.short.most < 0) return undefined;
  return piece.short.least < piece.short.most && piece.gap ? gaps[piece.gap] : Math.max(0, piece.short.least);
}

/** The hands of a piece's miters, or what leaves them open; empty text where no end is mitered. */
export function handOf(piece: Piece | undefined): string {
  const hand = piece?.hand ?? '';
  return typeof hand === 'string' ? hand : gaps[hand.gap];
}
