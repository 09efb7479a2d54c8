import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitDecreasing } from '../../../src/core/stock/fitDecreasing.js';
import { cuttingOf, dot, smallCuttings } from './support.js';

describe('First-fit and best-fit decreasing', () => {
  test('cut each piece once, and overfill no bar', () => {
    fc.assert(
      fc.property(smallCuttings, fc.constantFrom('first' as const, 'best' as const), (cutting, rule) => {
        const { runs, short } = fitDecreasing(cutting, rule);
        const cut = cutting.items.map((_, item) =>
          runs.reduce(
            (sum, { pattern, bars }) => sum + bars * (pattern.counts[pattern.items.indexOf(item)] ?? 0),
            0,
          ),
        );
        expect(cut).toEqual(cutting.items.map(({ demand }) => demand));
        expect(short.every((count) => count === 0)).toBe(true);
        for (const { pattern } of runs) {
          const sizes = pattern.items.map((item) => cutting.items[item]?.size ?? NaN);
          expect(dot(pattern.counts, sizes)).toBeLessThanOrEqual(
            cutting.stocks[pattern.stock]?.capacity ?? 0,
          );
        }
      }),
    );
  });

  test('first-fit takes the first bar with room, best-fit the tightest', () => {
    // 60 leaves 40, and 50 with 45 leaves 5.
    const cutting = cuttingOf({ sizes: [60, 50, 45, 5], capacities: [100] });
    const items = (rule: 'first' | 'best') =>
      fitDecreasing(cutting, rule).runs.map(({ pattern }) => pattern.items);
    expect(items('first')).toEqual([
      [0, 3],
      [1, 2],
    ]);
    expect(items('best')).toEqual([[0], [1, 2, 3]]);
  });

  test('leaves out what finds no bar', () => {
    const cutting = cuttingOf({ sizes: [60, 30], demands: [3, 1], capacities: [100], available: [2] });
    const { runs, short } = fitDecreasing(cutting, 'best');
    expect(runs).toHaveLength(2);
    expect(short).toEqual([1, 0]);
  });

  test('opens the stock that costs the least for what it holds', () => {
    const cutting = cuttingOf({ sizes: [30], demands: [3], capacities: [100, 60], costs: [10, 5] });
    expect(fitDecreasing(cutting, 'best').runs.map(({ pattern }) => pattern.stock)).toEqual([1, 1]);
  });
});
