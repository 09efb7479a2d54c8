import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillTable } from '../../../src/core/stock/fillTable.js';
import { dot, everyFill, smallCuttings } from './support.js';

const values = fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 5, maxLength: 5 });

describe('The table of fills', () => {
  test('says the most value of every capacity, as brute force does, and which pieces reach it', () => {
    fc.assert(
      fc.property(smallCuttings, values, (cutting, worth) => {
        const wanted = cutting.items.map(({ demand }) => demand);
        const sizes = cutting.items.map(({ size }) => size);
        const fills = everyFill(cutting);
        const table = fillTable(cutting, worth, wanted, 150, 1e7);
        for (const capacity of [0, 7, 30, 60, 149, 150]) {
          const fitting = fills.filter((fill) => dot(fill, sizes) <= capacity);
          expect(table.atMost(capacity)).toBe(Math.max(...fitting.map((fill) => dot(fill, worth))));
          const counts = [...(table.fillOf(capacity) ?? [])];
          expect(dot(counts, worth)).toBe(table.atMost(capacity));
          expect(dot(counts, sizes)).toBeLessThanOrEqual(capacity);
          counts.forEach((count, item) => {
            expect(count).toBeLessThanOrEqual(wanted[item] as number);
          });
        }
      }),
      { numRuns: 150 },
    );
  });

  test('says no less than the most where it is coarse, and stays within its cells', () => {
    fc.assert(
      fc.property(smallCuttings, values, fc.integer({ min: 60, max: 400 }), (cutting, worth, cells) => {
        const wanted = cutting.items.map(({ demand }) => demand);
        const exact = fillTable(cutting, worth, wanted, 150, 1e7);
        const coarse = fillTable(cutting, worth, wanted, 150, cells);
        expect(coarse.cells).toBeLessThanOrEqual(cells);
        for (const capacity of [0, 30, 99, 150])
          expect(coarse.atMost(capacity)).toBeGreaterThanOrEqual(exact.atMost(capacity));
      }),
      { numRuns: 150 },
    );
  });
});
