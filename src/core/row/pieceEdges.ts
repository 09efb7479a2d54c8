import type { Range } from '../check/range.js';
import type { RowJob } from './job/rowJob.js';

export type MiteredLength = Pick<RowJob, 'lengthMm' | 'miterLeftRad' | 'miterRightRad' | 'longSide'>;

export interface PieceEdges {
  /** The shorter edge. It is not above 0 where the miters meet. */
  short: Range;
  /** The edge with the long point of the left end; of a square left end the longer edge. */
  leftLong: Range;
}

/** Whether the long points of both ends are on one edge: one answer, or both where the row does not say. */
export function longPointsMeet({ miterLeftRad, miterRightRad, longSide }: MiteredLength): readonly boolean[] {
  if (miterLeftRad === 0 || miterRightRad === 0) return [true];
  if (longSide?.left === undefined || longSide.right === undefined) return [true, false];
  return [longSide.left === longSide.right];
}

/**
 * The edges of a part in mm, in the plane of its miters: its length, less what the miters take. Ranges where the row does
 * not say which sides are long, or which of several widths is mitered; undefined without a length. Source: geometry.
 */
export function pieceEdges(row: MiteredLength, widthsMm: readonly number[]): PieceEdges | undefined {
  const { lengthMm, miterLeftRad, miterRightRad } = row;
  if (lengthMm === undefined) return undefined;
  const [left, right] = [Math.tan(miterLeftRad), Math.tan(miterRightRad)];
  const ways = longPointsMeet(row).flatMap((meet) => widthsMm.map((widthMm) => ({ meet, widthMm })));
  return {
    short: rangeOf(
      ways.map(({ meet, widthMm }) => lengthMm - widthMm * (meet ? left + right : Math.max(left, right))),
    ),
    leftLong: rangeOf(ways.map(({ meet, widthMm }) => lengthMm - (meet ? 0 : widthMm * right))),
  };
}

function rangeOf(values: readonly number[]): Range {
  return { least: Math.min(...values), most: Math.max(...values) };
}
