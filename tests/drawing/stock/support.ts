import fc from 'fast-check';
import type { CutBar, CutPiece } from '../../../src/core/stock/list/jobPlan.js';
import type { JobPart } from '../../../src/core/stock/list/stockJob.js';
import type { BarInput } from '../../../src/drawing/stock/barInput.js';

export const inch = 25.4;
export const kerfMm = 3;
export const widthMm = 50;

export interface Cut {
  mark: string;
  lengthMm: number;
  pieces?: number;
  leanLeftRad?: number;
  leanRightRad?: number;
}

/** How far the middle of a face is from its nearest or farthest point. */
const half = (leanRad: number) => (widthMm * Math.abs(Math.tan(leanRad))) / 2;

/** A bar with pieces one after the other, each cut joined to the next as the model of the miters has it. */
export function barOf(cuts: readonly Cut[], more: Partial<CutBar> & { stockMm?: number } = {}): BarInput {
  const { stockMm = 6000, ...changes } = more;
  const pieces: CutPiece[] = [];
  let [middle, lean] = [0, 0];
  cuts.forEach((cut, at) => {
    const { mark, lengthMm, leanLeftRad = 0, leanRightRad = 0 } = cut;
    const part: JobPart = {
      mark,
      list: 'Parts',
      row: at + 1,
      pieces: cut.pieces ?? 1,
      longMm: lengthMm,
      middleMm: lengthMm - half(leanLeftRad) - half(leanRightRad),
      miterLeftRad: leanLeftRad,
      miterRightRad: leanRightRad,
      leanLeftRad,
      leanRightRad,
      verdict: 'OK',
      isSheared: true,
    };
    for (let piece = 0; piece < (cut.pieces ?? 1); piece++) {
      middle += lean === leanLeftRad ? 0 : Math.abs(Math.tan(lean) - Math.tan(leanLeftRad)) * (widthMm / 2);
      const end = middle + part.middleMm;
      pieces.push({
        letter: String.fromCharCode(65 + at),
        part,
        startMm: middle - half(leanLeftRad),
        endMm: end + half(leanRightRad),
        runMm: end + half(leanRightRad) + kerfMm,
        leanLeftRad,
        leanRightRad,
        isTurnedOver: false,
        isTurnedRound: false,
        push: { mm: lengthMm, reach: 'within' },
      });
      middle = end + kerfMm;
      lean = leanRightRad;
    }
  });
  const restMm = Math.max(0, stockMm - middle + half(lean));
  const bar = {
    pattern: 1,
    stock: { lengthMm: stockMm },
    bars: 6,
    pieces,
    restMm,
    isKept: false,
    ...changes,
  };
  return {
    bar,
    widthMm,
    trimMm: 0,
    gripMm: 0,
    unit: 'mm',
    room: { width: 296, height: 26, longestMm: stockMm },
  };
}

const leans = fc.constantFrom(0, 0, Math.PI / 4, -Math.PI / 4, Math.PI / 6);
const cuts = fc.array(
  fc.record({
    mark: fc.constantFrom('A1', 'ST14', 'HR-101', ''),
    lengthMm: fc.integer({ min: 120, max: 2000 }),
    pieces: fc.integer({ min: 1, max: 12 }),
    leanLeftRad: leans,
    leanRightRad: leans,
  }),
  { minLength: 1, maxLength: 14 },
);

/** Bars of all kinds, as long as what is cut from them needs. */
export const anyBar = fc
  .record({
    cuts,
    spare: fc.integer({ min: 60, max: 3000 }),
    width: fc.integer({ min: 260, max: 720 }),
    isKept: fc.boolean(),
    gripMm: fc.constantFrom(0, 40),
  })
  .map(({ cuts: some, spare, width, isKept, gripMm }): BarInput => {
    const used = barOf(some).bar.pieces.at(-1)?.endMm ?? 0;
    const bar = barOf(some, { stockMm: used + spare, isKept });
    return { ...bar, gripMm, room: { ...bar.room, width } };
  });
