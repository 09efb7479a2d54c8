import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planStock } from '../../../src/core/stock/planStock.js';
import type { StockPlan } from '../../../src/core/stock/stockPlan.js';
import { smallProblems, squareProblem } from './support.js';

const barsOf = (plan: StockPlan) => plan.bars.reduce((sum, { bars }) => sum + bars, 0);

describe('Plans by steps alone', () => {
  test('cuts two pieces from each bar that holds two with a kerf between', () => {
    const plan = planStock({ ...squareProblem({ 498: 10 }, [{ lengthMm: 1000 }]), kerfMm: 4 });
    expect(barsOf(plan)).toBe(5);
    expect(plan.proof).toBe('by bound');
    expect(plan.bars[0]?.pieces.map(({ startMm }) => startMm)).toEqual([0, 502]);
    expect(plan.bars[0]?.restMm).toBe(0);
  });

  test('buys the cheaper length where it is enough', () => {
    const stocks = [
      { lengthMm: 12000, price: 100 },
      { lengthMm: 6000, price: 60 },
    ];
    const plan = planStock(squareProblem({ 4000: 4 }, stocks));
    expect(plan.purchase).toBe(160);
  });

  test('says which parts are too long, and which found no bar', () => {
    const plan = planStock(squareProblem({ 7000: 1, 3000: 3 }, [{ lengthMm: 6000, available: 1 }]));
    expect(plan.shortages).toEqual([
      { part: 0, pieces: 1, why: 'not enough bars' },
      { part: 1, pieces: 1, why: 'too long' },
    ]);
    expect(plan.proof).toBeUndefined();
  });

  test('does not claim that bars are too few where steps alone found no plan', () => {
    // 1300 mm are needed and can be had; that the short bar holds nothing is not looked into.
    const stocks = [1200, 100].map((lengthMm) => ({ lengthMm, available: 1 }));
    const plan = planStock(squareProblem({ 600: 1, 700: 1 }, stocks));
    expect(plan.shortages).toEqual([{ part: 0, pieces: 1, why: 'none found' }]);
  });

  test('the same problem gives the same plan', () => {
    fc.assert(
      fc.property(smallProblems(), (problem) => {
        expect(JSON.stringify(planStock(problem))).toBe(JSON.stringify(planStock(problem)));
      }),
      { numRuns: 50 },
    );
  });

  test('nests miters that lean alike when turned over', () => {
    const rad = Math.PI / 4;
    const part = { lengthMm: 500, pieces: 4, leanLeftRad: -rad, leanRightRad: rad };
    const problem = { ...squareProblem({}, [{ lengthMm: 2000 }]), parts: [part], widthMm: 100 };
    const [bar] = planStock(problem).bars;
    expect(bar?.pieces.map(({ isTurnedOver }) => isTurnedOver)).toEqual([false, true, false, true]);
    // Four pieces overlap three times by the width.
    expect(bar?.pieces.at(-1)?.endMm).toBeCloseTo(4 * 500 - 3 * 100, 6);
  });

  test('a mitered part needs the bar to be longer by what its two end cuts take more than square ones', () => {
    const [rad, kerfMm] = [Math.PI / 4, 3];
    const moreMm = 2 * kerfMm * (1 / Math.cos(rad) - 1);
    const problem = (lengthMm: number) => ({
      ...squareProblem({}, [{ lengthMm: 2000 }]),
      parts: [{ lengthMm, pieces: 1, leanLeftRad: -rad, leanRightRad: rad }],
      widthMm: 100,
      kerfMm,
    });
    expect(planStock(problem(2000 - moreMm - 0.001)).shortages).toEqual([]);
    expect(planStock(problem(2000 - moreMm + 0.001)).shortages).toEqual([
      { part: 0, pieces: 1, why: 'too long' },
    ]);
    expect(planStock({ ...problem(2000), kerfMm: 0 }).shortages).toEqual([]);
  });

  test('every plan of a small problem passes its verification', () => {
    fc.assert(
      fc.property(smallProblems(), (problem) => {
        const seen: number[] = [];
        const plan = planStock(problem, { onBest: (each) => seen.push(each.purchase) });
        expect(plan.bound).toBeLessThanOrEqual(plan.purchase);
        expect(seen.length).toBeGreaterThan(0);
      }),
      { numRuns: 300 },
    );
  });
});
