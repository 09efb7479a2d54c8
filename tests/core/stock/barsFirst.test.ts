import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barsFirst } from '../../../src/core/stock/barsFirst.js';
import type { Cutting } from '../../../src/core/stock/cutting.js';
import { bestFit } from '../../../src/core/stock/fitDecreasing.js';
import { belowOf, incumbent } from '../../../src/core/stock/incumbent.js';
import { countWork } from '../../../src/core/stock/work.js';
import { loadSolver } from '../../../src/planner/highs.js';
import { cuttingOf, dot, everyFill } from './support.js';

const solver = await loadSolver();

const cuttings = fc
  .record({
    pieces: fc.array(fc.tuple(fc.integer({ min: 20, max: 60 }), fc.integer({ min: 1, max: 3 })), {
      minLength: 1,
      maxLength: 3,
    }),
    stocks: fc.array(
      fc.record({
        capacity: fc.integer({ min: 60, max: 150 }),
        cost: fc.integer({ min: 0, max: 9 }),
        available: fc.constantFrom(1, 2, 3, Infinity),
      }),
      { minLength: 2, maxLength: 3 },
    ),
  })
  .map(({ pieces, stocks }) => {
    const falling = [...new Map(pieces)].sort((a, b) => b[0] - a[0]);
    return cuttingOf({
      sizes: falling.map(([size]) => size),
      demands: falling.map(([, demand]) => demand),
      capacities: stocks.map(({ capacity }) => capacity),
      costs: stocks.map(({ cost }) => cost),
      available: stocks.map(({ available }) => available),
    });
  });

/** By choices of pieces, bar after bar; Infinity where the bars do not suffice. */
function leastCost({ items, stocks }: Cutting): number {
  const fills = everyFill({ items });
  const keyOf = (left: readonly number[]) => left.join();
  const pieces = items.reduce((sum, { demand }) => sum + demand, 0);
  let costs = new Map([[keyOf(items.map(({ demand }) => demand)), 0]]);
  for (const { capacity, cost, available } of stocks) {
    const fitting = fills.filter(
      (fill) =>
        dot(
          fill,
          items.map(({ size }) => size),
        ) <= capacity,
    );
    for (let bar = 0; bar < Math.min(available, pieces); bar++) {
      const next = new Map(costs);
      for (const [key, before] of costs)
        for (const fill of fitting) {
          const left = key.split(',').map((count, i) => Math.max(0, Number(count) - (fill[i] ?? 0)));
          const other = before + cost;
          if (other < (next.get(keyOf(left)) ?? Infinity)) next.set(keyOf(left), other);
        }
      costs = next;
    }
  }
  return costs.get(keyOf(items.map(() => 0))) ?? Infinity;
}

describe('First the bars, then what is cut from them', () => {
  test('the plan is never below the least, the bound never above it, and a shortage is real', () => {
    let proven = 0;
    fc.assert(
      fc.property(cuttings, (cutting) => {
        const work = countWork(() => false, Infinity);
        const best = incumbent(cutting, () => undefined);
        for (const packing of bestFit(cutting)) best.offer(packing);
        barsFirst(cutting, solver, best, { patterns: [], duals: [] }, 1e7, work);
        const least = leastCost(cutting);
        expect(best.bound).toBeLessThanOrEqual(least);
        expect(belowOf(cutting, best)).toBeGreaterThanOrEqual(least);
        if (best.isShort) expect(least).toBe(Infinity);
        if (best.isDone() || best.isShort) proven++;
      }),
      { numRuns: 300 },
    );
    expect(proven).toBeGreaterThan(290);
  });

  test('ends where its count is used up', () => {
    const cutting = cuttingOf({
      sizes: [97, 61, 53, 47],
      demands: [9, 9, 9, 9],
      capacities: [301, 203],
      costs: [301, 203],
    });
    const best = incumbent(cutting, () => undefined);
    for (const packing of bestFit(cutting)) best.offer(packing);
    const before = best.packing;
    barsFirst(
      cutting,
      solver,
      best,
      { patterns: [], duals: [] },
      0,
      countWork(() => false, Infinity),
    );
    expect(best.packing).toBe(before);
    expect(best.bound).toBe(0);
  });
});
