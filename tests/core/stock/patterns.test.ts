import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { costOf } from '../../../src/core/stock/cutting.js';
import { patternKey, patternOf, repeatsOf, tidy } from '../../../src/core/stock/patterns.js';
import { cuttingOf, smallCuttings } from './support.js';

describe('A plan made tidy', () => {
  test('cuts what is wanted and no more, and never costs more', () => {
    fc.assert(
      fc.property(
        smallCuttings,
        fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 5, maxLength: 5 }),
        (cutting, more) => {
          // Each item in bars of its own, some of them too many.
          const runs = cutting.items.map(({ demand }, item) => ({
            pattern: { stock: 0, items: [item], counts: [1] },
            bars: demand + (more[item] as number),
          }));
          const packing = tidy(cutting, { runs, short: [] });
          const cut = cutting.items.map((_, item) =>
            packing.runs.reduce(
              (sum, { pattern, bars }) => sum + bars * (pattern.counts[pattern.items.indexOf(item)] ?? 0),
              0,
            ),
          );
          expect(cut).toEqual(cutting.items.map(({ demand }) => demand));
          expect(costOf(cutting, packing)).toBeLessThanOrEqual(costOf(cutting, { runs, short: [] }));
        },
      ),
    );
  });

  test('buys each bar in the cheapest length that holds it, as far as there are any', () => {
    const cutting = cuttingOf({
      sizes: [40],
      demands: [3],
      capacities: [100, 50],
      costs: [10, 4],
      available: [9, 2],
    });
    const { runs } = tidy(cutting, {
      runs: [{ pattern: { stock: 0, items: [0], counts: [1] }, bars: 3 }],
      short: [],
    });
    expect(runs.map(({ pattern, bars }) => [pattern.stock, bars])).toEqual([
      [1, 2],
      [0, 1],
    ]);
  });
});

test('patterns of counts, their names, and how often they repeat', () => {
  const pattern = patternOf(1, [0, 2, 0, 1]);
  expect(pattern).toEqual({ stock: 1, items: [1, 3], counts: [2, 1] });
  expect(patternKey(pattern)).toBe('1:1,3:2,1');
  expect(repeatsOf(pattern, [0, 7, 0, 9], 5)).toBe(3);
  expect(repeatsOf(pattern, [0, 7, 0, 9], 2)).toBe(2);
});
