import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { everyPattern } from '../../../src/core/stock/everyPattern.js';
import { countWork } from '../../../src/core/stock/work.js';
import { cuttingOf, dot, everyFill, smallCuttings } from './support.js';

const values = fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 5, maxLength: 5 });
const work = countWork(() => false, Infinity);

describe('Every pattern', () => {
  test('is there that brute force finds full and worth enough, and none else', () => {
    fc.assert(
      fc.property(smallCuttings, values, fc.integer({ min: 0, max: 150 }), (cutting, worth, least) => {
        const sizes = cutting.items.map(({ size }) => size);
        const room = (fill: number[]) => (cutting.stocks[0]?.capacity ?? 0) - dot(fill, sizes);
        const isFull = (fill: number[]) =>
          fill.every((count, i) => count === cutting.items[i]?.demand || (sizes[i] as number) > room(fill));
        const wanted = everyFill(cutting).filter(
          (fill) => room(fill) >= 0 && isFull(fill) && dot(fill, worth) >= least,
        );
        const found = everyPattern(cutting, worth, 0, least, 1e6, 1e7, work) ?? [];
        const fills = found.map(({ items, counts }) =>
          sizes.map((_, item) => (items.includes(item) ? (counts[items.indexOf(item)] as number) : 0)),
        );
        expect(fills.map(String).sort()).toEqual(wanted.map(String).sort());
      }),
      { numRuns: 300 },
    );
  });

  test('is never a bar of nothing, where no piece fits with its miters', () => {
    const square = cuttingOf({ sizes: [90], capacities: [100] });
    const items = square.items.map((item) => ({ ...item, left: 20, right: 20 }));
    expect(everyPattern({ ...square, items, isSquare: false }, [1], 0, -9, 9, 99, work)).toEqual([]);
    expect(everyPattern(square, [1], 0, -9, 9, 99, work)).toHaveLength(1);
  });

  test('gives up at the most patterns and nodes', () => {
    const cutting = cuttingOf({ sizes: [30, 20, 10], demands: [9, 9, 9], capacities: [100] });
    expect(everyPattern(cutting, [3, 2, 1], 0, 0, 3, 1e6, work)).toBeUndefined();
    expect(everyPattern(cutting, [3, 2, 1], 0, 0, 1e6, 3, work)).toBeUndefined();
  });
});
