import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Cutting, Item } from '../../../src/core/stock/cutting.js';
import { miterCount } from '../../../src/core/stock/miterCount.js';
import { joinsOf } from '../../../src/core/stock/miterLoss.js';

const places = fc.constantFrom(-7, -5, -1, 0, 0, 1, 5, 7);

test('pieces that come and go lose what the same pieces lose at once', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(places, places), { minLength: 1, maxLength: 5 }),
      fc.boolean(),
      fc.array(fc.tuple(fc.nat(4), fc.integer({ min: -2, max: 3 })), { maxLength: 12 }),
      (faces, isDirected, steps) => {
        const items = faces.map(([left, right], part): Item => {
          return { size: 100, left, right, demand: 1, parts: [{ part, pieces: 1 }] };
        });
        const cutting: Cutting = {
          items,
          stocks: [],
          isDirected,
          isSquare: false,
          costStep: 1,
          placeOf: () => 0,
        };
        const count = miterCount(cutting);
        const counts = items.map(() => 0);
        const all = items.map((_, item) => item);
        for (const [which, pieces] of steps) {
          const item = which % items.length;
          const change = Math.max(-(counts[item] ?? 0), pieces);
          counts[item] = (counts[item] ?? 0) + change;
          count.add(item, change);
          expect(count.loss()).toBe(joinsOf(cutting, all, counts).loss);
        }
      },
    ),
    { numRuns: 500 },
  );
});
