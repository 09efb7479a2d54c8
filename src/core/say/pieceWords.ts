import type { Piece, PieceGap } from '../row/piece.js';

const gaps: Record<PieceGap | 'Angle shear slug', string> = {
  'Long side': 'not known: Long side is blank',
  'Miter leg': 'not known: Miter leg is blank',
  'how it lies': 'not known: the section may lie in two ways',
  'Angle shear slug': 'not known: Angle shear slug is blank or cannot be read',
};

/** What leaves a side, a hand or a setting open. */
export function gapWords(gap: keyof typeof gaps): string {
  return gaps[gap];
}

/** The shorter edge of a piece in mm, or what leaves it open; undefined where the miters leave no piece. */
export function shortOf(piece: Piece | undefined): number | string | undefined {
  if (!piece || piece.short.most < 0) return undefined;
  return piece.short.least < piece.short.most && piece.gap
    ? gapWords(piece.gap)
    : Math.max(0, piece.short.least);
}

/** The hands of a piece's miters, or what leaves them open; empty text where no end is mitered. */
export function handOf(piece: Piece | undefined): string {
  const hand = piece?.hand ?? '';
  return typeof hand === 'string' ? hand : gapWords(hand.gap);
}
