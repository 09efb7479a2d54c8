import { refuse } from '../inputError.js';
import { toleranceMm } from '../part/tolerance.js';
import { formatLength } from '../quantity/formatLength.js';
import { requirePositive } from '../requireRange.js';
import { requireMiter } from './requireMiter.js';

/**
 * A piece between two cuts, in the plane of its miters. A right miter above 0 has its long point on the same edge as the
 * left one, as a piece of a frame; one below 0 has it on the other edge, as a brace between two parallel rails.
 */
export interface MiteredPiece {
  /** Long point to long point. */
  longMm: number;
  /** Width of the bar in the plane of the miters. */
  widthMm: number;
  miterLeftRad: number;
  miterRightRad: number;
}

/** The two edges of a piece: that with the long point of the left end, and the other. */
export interface PieceEdges {
  leftLongMm: number;
  otherMm: number;
}

/**
 * The lengths of both edges of a piece. Throws `invalid` where the miters leave no piece; miters that meet in a point
 * leave a triangle, which is one.
 */
export function edgesOf({ longMm, widthMm, miterLeftRad, miterRightRad }: MiteredPiece): PieceEdges {
  requirePositive('Long', longMm);
  requirePositive('Width', widthMm);
  requireMiter('Miter left', miterLeftRad);
  requireMiter('Miter right', miterRightRad);
  const leftMm = widthMm * Math.tan(Math.abs(miterLeftRad));
  const rightMm = widthMm * Math.tan(Math.abs(miterRightRad));
  const isSameEdge = miterRightRad >= 0;
  const leftLongMm = longMm - (isSameEdge ? 0 : rightMm);
  const otherMm = longMm - leftMm - (isSameEdge ? rightMm : 0);
  const shortMm = Math.min(leftLongMm, otherMm);
  if (shortMm < -toleranceMm || Math.max(leftLongMm, otherMm) <= toleranceMm) {
    const size = (mm: number) => `${formatLength(mm, 'mm')} mm (${formatLength(mm, 'in')} in)`;
    const problem = `the miters take ${size(longMm - shortMm)} of one edge, and the piece is ${size(longMm)} long.`;
    return refuse('Long', formatLength(longMm, 'mm'), problem, 'Give a longer piece or a smaller miter.');
  }
  const pointed = (mm: number) => (mm <= toleranceMm ? 0 : mm);
  return { leftLongMm: pointed(leftLongMm), otherMm: pointed(otherMm) };
}
