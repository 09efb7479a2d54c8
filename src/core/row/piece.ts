import { type Hand, handOfEnd } from '../part/cutHand.js';
import { planeWidthsMm } from '../section/planeWidth.js';
import type { Range } from '../check/range.js';
import type { LengthUnit } from '../quantity/units.js';
import type { AnySection } from '../section/section.js';
import { pieceEdges } from './pieceEdges.js';
import type { PartEnd, RowJob } from './job/rowJob.js';
import { type Mitered, miteredWidths } from './shortestSide.js';

/** The hands of miter in the pieces of a row; `none`: a piece turned over has the other hand. */
export type PieceHand = Hand | 'both' | 'none';

/** What would settle a piece that is not known: a blank cell, or how the section lies. */
export type PieceGap = 'Long side' | 'Miter leg' | 'how it lies';

/** The piece of a row between its cuts. */
export interface Piece {
  /** Long point to long point. */
  longMm: number;
  short: Range;
  /** The edge with the long point of the left end; of a square left end the longer edge. */
  leftLong: Range;
  /** Missing where no end is mitered, and where the miters leave no piece; a gap where it is not known. */
  hand?: PieceHand | { gap: PieceGap };
  /** Why an edge is a range. */
  gap?: PieceGap;
}

/** What of a row its piece hangs on. */
export type MiteredRow = Mitered & Pick<RowJob, 'hands'>;

/**
 * The long and the short side of a row's piece, and the hands of its miters: as it lies with the mitered leg flat, the
 * other leg standing up and the heel at whoever looks, its left end at the left. Undefined without a length.
 */
export function pieceOf(row: MiteredRow, unit: LengthUnit): Piece | undefined {
  const { section, lengthMm, miterLeftRad, miterRightRad } = row;
  const isMitered = miterLeftRad > 0 || miterRightRad > 0;
  const isLaidOut = section.kind === 'flat' || section.kind === 'angle';
  const edges = pieceEdges(row, isLaidOut ? miteredWidths(row, unit) : planeWidthsMm(section));
  if (edges === undefined || lengthMm === undefined) return undefined;
  const piece: Piece = { longMm: lengthMm, ...edges };
  const isOpen = [edges.short, edges.leftLong].some(({ least, most }) => least < most);
  if (isOpen) piece.gap = gapOf(row);
  if (isMitered && edges.short.most >= 0) piece.hand = miterHand(row);
  return piece;
}

function gapOf({ section, miterLeftRad, miterRightRad, longSide, miterLeg }: MiteredRow): PieceGap {
  const both = miterLeftRad > 0 && miterRightRad > 0;
  if (both && (longSide?.left === undefined || longSide.right === undefined)) return 'Long side';
  return section.kind === 'angle' && miterLeg === undefined ? 'Miter leg' : 'how it lies';
}

/** The hands of the miters of a row that has some, or what is blank that would tell. */
export function miterHand(row: MiteredRow): PieceHand | { gap: PieceGap } {
  const { section, miterLeftRad, miterRightRad, miterLeg, hands, longSide } = row;
  if (turnsOver(section)) return 'none';
  if (section.kind !== 'angle') return { gap: 'how it lies' };
  if (miterLeg === 'both' && section.legAMm === section.legBMm) return 'none';
  if (hands && hands.left > 0 && hands.right > 0) return 'both';
  const found = new Set<Hand>();
  for (const [end, rad] of [
    ['left', miterLeftRad],
    ['right', miterRightRad],
  ] as [PartEnd, number][]) {
    const side = longSide?.[end];
    if (rad === 0) continue;
    if (side === undefined) return { gap: 'Long side' };
    found.add(handOfEnd(end, side === 'heel' ? 'heel' : 'toe'));
  }
  const [first, other] = found;
  return other === undefined && first !== undefined ? first : 'both';
}

/** Whether a piece may be turned over about its length: then it has either hand. */
function turnsOver(section: AnySection): boolean {
  if (section.kind === 'beam') return section.form === 'I';
  return section.kind !== 'angle' && section.kind !== 'channel' && section.kind !== 'tee';
}
