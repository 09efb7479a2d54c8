import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillStates } from '../../../src/core/stock/fillStates.js';
import { cuttingOf, dot, everyFill, smallCuttings } from './support.js';

/** By item. */
const values = fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 5, maxLength: 5 });

describe('The most valuable pieces for a bar, by states', () => {
  test('are those that brute force finds, where they are worth more than the threshold', () => {
    fc.assert(
      fc.property(smallCuttings, values, fc.integer({ min: 0, max: 200 }), (cutting, worth, above) => {
        const wanted = cutting.items.map(({ demand }) => demand);
        const sizes = cutting.items.map(({ size }) => size);
        const capacity = cutting.stocks[0]?.capacity ?? 0;
        const fitting = everyFill(cutting).filter((fill) => dot(fill, sizes) <= capacity);
        const most = Math.max(...fitting.map((fill) => dot(fill, worth)));
        const { fill, atMost } = fillStates(cutting, worth, wanted, capacity, above, 1e6) ?? { atMost: NaN };
        expect(atMost).toBe(Math.max(most, above));
        expect(fill?.value).toBe(most > above ? most : undefined);
        if (fill) expect(dot([...fill.counts], worth)).toBe(most);
        expect(dot([...(fill?.counts ?? [])], sizes)).toBeLessThanOrEqual(capacity);
        fill?.counts.forEach((count, item) => expect(count).toBeLessThanOrEqual(wanted[item] ?? NaN));
      }),
      { numRuns: 300 },
    );
  });

  test('gives up where they get too many', () => {
    const cutting = cuttingOf({ sizes: [41, 31, 23, 17, 11], demands: [9, 9, 9, 9, 9], capacities: [500] });
    const [worth, wanted] = [
      [42, 30, 23, 16, 11],
      [9, 9, 9, 9, 9],
    ];
    expect(fillStates(cutting, worth, wanted, 500, 0, 1e6)).toBeDefined();
    expect(fillStates(cutting, worth, wanted, 500, 0, 20)).toBeUndefined();
  });
});
