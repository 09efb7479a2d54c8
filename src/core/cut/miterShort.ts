import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { edgesOf, type MiteredPiece } from './miteredPiece.js';

/**
 * The shorter edge of a mitered piece.
 *
 * Formula: s = l − b · (tan θ1 + tan θ2); with the long points on different edges l − b · max(tan θ1, tan θ2)
 * @param piece length l between the long points and width b in the plane of the miters, in mm; miters θ from square in
 *   rad, the right one below 0 where its long point is on the other edge
 * @param working collects the step when given
 * @returns length in mm; 0 where the miters meet in a point
 * Valid for miters up to 60°. Throws `invalid` beyond, for sizes not above zero, and where the miters leave no piece.
 * @example miterShortMm({ longMm: 1000, widthMm: 50, miterLeftRad: Math.PI / 4, miterRightRad: Math.PI / 4 }) // 900
 * Source: plane geometry.
 */
export function miterShortMm(piece: MiteredPiece, working?: Working): number {
  const { leftLongMm, otherMm } = edgesOf(piece);
  const shortMm = Math.min(leftLongMm, otherMm);
  const { longMm, widthMm, miterLeftRad, miterRightRad } = piece;
  working?.step({
    title: 'Short side',
    formula: miterRightRad < 0 ? 's = l − b · max(tan θ1, tan θ2)' : 's = l − b · (tan θ1 + tan θ2)',
    values: [
      lengthValue('l', 'long point to long point', longMm),
      lengthValue('b', 'width in the plane of the miters', widthMm),
      { symbol: 'θ1', meaning: 'left miter from square', kind: 'angle', value: miterLeftRad },
      { symbol: 'θ2', meaning: 'right miter from square', kind: 'angle', value: Math.abs(miterRightRad) },
    ],
    result: lengthValue('s', 'shorter edge', shortMm),
    source: 'plane geometry',
  });
  return shortMm;
}
