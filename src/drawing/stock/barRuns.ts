import type { CutBar, CutPiece } from '../../core/stock/list/jobPlan.js';

/** Pieces of one part that lie alike, one after the other in a bar. */
export interface BarRun {
  letter: string;
  /** The mark, in words. */
  name: string;
  lengthMm: number;
  pieces: readonly [CutPiece, ...CutPiece[]];
}

/** The pieces of a bar in their order along it, those of one part together. */
export function barRuns({ pieces }: CutBar): BarRun[] {
  const runs: BarRun[] = [];
  for (const piece of pieces) {
    const last = runs.at(-1);
    if (last && lieAlike(last.pieces[0], piece))
      runs[runs.length - 1] = { ...last, pieces: [...last.pieces, piece] };
    else {
      const { letter, part } = piece;
      const name = part.mark === '' ? 'no mark' : part.mark;
      runs.push({ letter, name, lengthMm: part.longMm, pieces: [piece] });
    }
  }
  return runs;
}

function lieAlike(a: CutPiece, b: CutPiece): boolean {
  return a.part === b.part && a.isTurnedOver === b.isTurnedOver && a.isTurnedRound === b.isTurnedRound;
}
