import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { miterKerfMm } from './miterKerf.js';
import { edgesOf, type MiteredPiece } from './miteredPiece.js';

export interface StopCut extends MiteredPiece {
  /** Kerf or slug, across the cut; 0 for a single blade. */
  kerfMm: number;
}

/**
 * What is pushed to the stop, to cut a piece off at its right end. The left end is at the stop, a flat face square to the
 * bar, which a mitered end touches with its long point. The length is measured along the edge where the stop touches,
 * along the longer edge where the left end is square, from the stop to the far side of the cut, where the rest of the
 * bar begins: so kerf or slug is in it.
 *
 * Formula: p = e + k / cos θ2; e the edge that touches: l, or l − b · tan θ2 where the right long point is on the other edge
 * @param cut length l between the long points and width b in the plane of the miters, in mm; miters θ from square in rad,
 *   the right one below 0 where its long point is on the other edge; kerf k in mm, 0 for none
 * @param working collects the steps when given
 * @returns length in mm
 * Valid for miters up to 60°. Throws `invalid` beyond, for sizes not above zero, and where the miters leave no piece.
 * @example cutLengthMm({ longMm: 1000, widthMm: 50, miterLeftRad: 0, miterRightRad: 0, kerfMm: 3 }) // 1003
 * Source: plane geometry.
 */
export function cutLengthMm(cut: StopCut, working?: Working): number {
  const { kerfMm, ...piece } = cut;
  const edges = edgesOf(piece);
  const { longMm, widthMm, miterLeftRad, miterRightRad } = piece;
  const isOnOtherEdge = miterLeftRad !== 0 && miterRightRad < 0;
  const edgeMm = isOnOtherEdge ? edges.leftLongMm : longMm;
  const alongMm = kerfMm === 0 ? 0 : miterKerfMm({ kerfMm, miterRad: miterRightRad }, working);
  const pushedMm = edgeMm + alongMm;
  working?.step({
    title: 'Pushed to the stop',
    formula: isOnOtherEdge ? 'p = l − b · tan θ2 + a' : 'p = l + a',
    values: [
      lengthValue('l', 'long point to long point', longMm),
      ...(isOnOtherEdge
        ? [
            lengthValue('b', 'width in the plane of the miters', widthMm),
            {
              symbol: 'θ2',
              meaning: 'right miter from square',
              kind: 'angle',
              value: Math.abs(miterRightRad),
            } as const,
          ]
        : []),
      lengthValue('a', 'kerf or slug along the bar', alongMm),
    ],
    result: lengthValue('p', 'from the stop to the far side of the cut', pushedMm),
    source: 'plane geometry',
  });
  return pushedMm;
}
