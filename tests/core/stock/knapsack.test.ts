import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { knapsack } from '../../../src/core/stock/knapsack.js';
import { dot, everyFill, smallCuttings } from './support.js';

/** By item. */
const values = fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 5, maxLength: 5 });

describe('The most valuable pieces for a bar', () => {
  test('are those that brute force finds, no more of each than wanted', () => {
    fc.assert(
      fc.property(smallCuttings, values, (cutting, worth) => {
        const wanted = cutting.items.map(({ demand }) => demand);
        const sizes = cutting.items.map(({ size }) => size);
        const capacity = cutting.stocks[0]?.capacity ?? 0;
        const fitting = everyFill(cutting).filter((fill) => dot(fill, sizes) <= capacity);
        const most = Math.max(...fitting.map((fill) => dot(fill, worth)));
        const result = knapsack(cutting, worth, wanted, capacity, 0, 1e6);
        expect(result.isComplete).toBe(true);
        expect(result.atMost).toBe(most);
        for (const { counts, value } of result.found) {
          expect(dot([...counts], worth)).toBe(value);
          expect(dot([...counts], sizes)).toBeLessThanOrEqual(capacity);
        }
        expect(result.found.at(-1)?.value ?? 0).toBe(most);
      }),
      { numRuns: 300 },
    );
  });

  test('are bounded also where the search stops, and only those above the threshold are found', () => {
    fc.assert(
      fc.property(smallCuttings, values, fc.integer({ min: 1, max: 4 }), (cutting, worth, nodes) => {
        const wanted = cutting.items.map(({ demand }) => demand);
        const capacity = cutting.stocks[0]?.capacity ?? 0;
        const most = knapsack(cutting, worth, wanted, capacity, 0, 1e6).atMost;
        expect(knapsack(cutting, worth, wanted, capacity, 0, nodes).atMost).toBeGreaterThanOrEqual(most);
        expect(knapsack(cutting, worth, wanted, capacity, most, 1e6).found).toEqual([]);
        expect(knapsack(cutting, worth, wanted, capacity, most - 1, 1e6).found.at(-1)?.value ?? 0).toBe(most);
      }),
      { numRuns: 200 },
    );
  });
});
