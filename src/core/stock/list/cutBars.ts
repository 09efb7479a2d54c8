import { toleranceMm } from '../../part/tolerance.js';
import type { PlannedPiece, StockPlan } from '../stockPlan.js';
import { compareText } from './compareParts.js';
import { gaugePush } from './gaugePush.js';
import type { CutBar, CutPiece } from './jobPlan.js';
import { allowanceMm } from './problemOf.js';
import type { JobPart, StockJob } from './stockJob.js';

/** The letter of a part by its place, the longest as A: A to Z, AA, AB … */
function partLetter(index: number): string {
  const before = Math.floor(index / 26);
  return (before === 0 ? '' : partLetter(before - 1)) + String.fromCharCode(65 + (index % 26));
}

/** Left and right miter of a part as it lies in the bar. */
export function mitersInBar(
  { miterLeftRad, miterRightRad }: JobPart,
  isTurnedRound: boolean,
): [number, number] {
  return isTurnedRound ? [miterRightRad, miterLeftRad] : [miterLeftRad, miterRightRad];
}

/** The bars of a plan in shop order: those with the longest pieces first, and those cut alike together. */
export function cutBars(job: StockJob, plan: StockPlan): CutBar[] {
  const bars = plan.bars.flatMap(({ stock: at, bars: count, pieces, restMm, isKept }) => {
    const stock = job.stocks[at];
    if (!stock) return [];
    return [
      {
        stock,
        bars: count,
        restMm,
        isKept,
        pieces: pieces.map((piece) => cutPiece(job, piece, stock.lengthMm)),
      },
    ];
  });
  return bars.sort(byLongest).map((bar, index) => ({ pattern: index + 1, ...bar }));
}

function cutPiece(job: StockJob, piece: PlannedPiece, barMm: number): CutPiece {
  const part = job.parts[piece.part];
  if (!part) throw new Error('a plan names a part that its job does not have');
  const [before, behind] = [allowanceMm(part, 'left', job.kerf), allowanceMm(part, 'right', job.kerf)];
  const { leanLeftRad, leanRightRad, isTurnedOver, isTurnedRound } = piece;
  const endMm = piece.endMm - behind;
  const alongMm = job.kerf.mm / Math.cos(part.notNested ? part.miterRightRad : leanRightRad);
  const isUncut = endMm >= barMm - toleranceMm;
  return {
    letter: partLetter(piece.part),
    part,
    startMm: piece.startMm + before,
    endMm,
    runMm: Math.min(barMm, endMm + alongMm),
    leanLeftRad,
    leanRightRad,
    isTurnedOver,
    isTurnedRound,
    push: isUncut ? { none: true } : gaugePush(job, part, piece),
  };
}

type Unnumbered = Omit<CutBar, 'pattern'>;

/** By the longest piece, the next longest and so on; then the longer bar, then as they are cut. */
function byLongest(a: Unnumbered, b: Unnumbered): number {
  const lengths = ({ pieces }: Unnumbered) => pieces.map(({ part }) => part.longMm).sort((x, y) => y - x);
  const [ofA, ofB] = [lengths(a), lengths(b)];
  const at = ofA.findIndex((length, index) => length !== ofB[index]);
  const letters = ({ pieces }: Unnumbered) => pieces.map(({ letter }) => letter).join(' ');
  return (
    (ofB[at] ?? 0) - (ofA[at] ?? 0) ||
    b.stock.lengthMm - a.stock.lengthMm ||
    b.bars - a.bars ||
    compareText(letters(a), letters(b))
  );
}
