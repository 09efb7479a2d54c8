import { describe, expect, test } from 'vitest';
import { layOut } from '../../../src/core/stock/layOut.js';
import type { StockProblem } from '../../../src/core/stock/stockProblem.js';
import { wholeUnits } from '../../../src/core/stock/wholeUnits.js';
import { squareProblem } from './support.js';

const rad = Math.PI / 4;
const losses = { kerfMm: 3, trimMm: 10, gripMm: 40, keepMm: 100 };
const square: StockProblem = { ...squareProblem({ 300: 4 }, [{ lengthMm: 1000 }]), ...losses };

function laidOut(problem: StockProblem, counts: number, bars: number) {
  const pattern = { stock: 0, items: [0], counts: [counts] };
  return layOut(problem, wholeUnits(problem), { runs: [{ pattern, bars }], short: [] }, 'not enough bars');
}

describe('A bar laid out', () => {
  test('starts behind the trim, has a kerf between pieces, and what is left ends with the grip', () => {
    const { bars, shortages } = laidOut(square, 2, 2);
    expect(shortages).toEqual([]);
    expect(bars).toHaveLength(1);
    const [bar] = bars;
    expect(bar?.bars).toBe(2);
    expect(bar?.pieces.map(({ startMm, endMm }) => [startMm, endMm])).toEqual([
      [10, 310],
      [313, 613],
    ]);
    // 1000 − 613 − 3
    expect(bar?.restMm).toBeCloseTo(384, 9);
    expect(bar?.isKept).toBe(true);
  });

  test('says whether the rest is worth keeping', () => {
    const kept = (keepMm: number) => laidOut({ ...square, keepMm }, 2, 1).bars[0]?.isKept;
    expect([kept(384), kept(385), kept(0)]).toEqual([true, false, true]);
  });

  test('says which pieces found no bar', () => {
    expect(laidOut(square, 3, 1).shortages).toEqual([{ part: 0, pieces: 1, why: 'not enough bars' }]);
  });

  test('takes parts that are cut alike in their order, and bars of the same parts as one', () => {
    const parts = [1, 3].map((pieces) => ({ lengthMm: 300, pieces, leanLeftRad: 0, leanRightRad: 0 }));
    const { bars } = laidOut({ ...square, parts }, 2, 2);
    expect(bars.map((bar) => [bar.bars, ...bar.pieces.map(({ part }) => part)])).toEqual([
      [1, 0, 1],
      [1, 1, 1],
    ]);
  });

  test('lets miters that lean alike share a cut: k / cos 45° along the bar', () => {
    const part = { lengthMm: 300, pieces: 2, leanLeftRad: rad, leanRightRad: rad };
    const problem: StockProblem = { ...square, parts: [part], widthMm: 50, turning: 'none' };
    const [bar] = laidOut(problem, 2, 1).bars;
    const [first, second] = bar?.pieces ?? [];
    // Both lean the same way, so the second starts a width before the first ends.
    expect((second?.startMm ?? NaN) - (first?.endMm ?? NaN)).toBeCloseTo(3 * Math.SQRT2 - 50, 6);
  });
});
