import { expect, test } from 'vitest';
import { materialBound } from '../../../src/core/stock/materialBound.js';
import { cuttingOf } from './support.js';

test('is the material at the price of the stock that holds the most for it, in whole steps', () => {
  const cutting = cuttingOf({ sizes: [60, 30], demands: [3, 1], capacities: [100, 50], costs: [10, 4] });
  // 210 units at 4 for 50: 16.8.
  expect(materialBound(cutting)).toBe(17);
});

test('leaves out what cannot be had, and says nothing without bars', () => {
  const few = cuttingOf({
    sizes: [60],
    demands: [5],
    capacities: [100, 50],
    costs: [10, 4],
    available: [9, 0],
  });
  expect(materialBound(few)).toBe(30);
  expect(materialBound(cuttingOf({ sizes: [60], capacities: [100], available: [0] }))).toBe(0);
});

test('does not rise over a whole step by rounding', () => {
  const cutting = cuttingOf({ sizes: [1], demands: [3 * 49], capacities: [49], costs: [1] });
  expect(materialBound(cutting)).toBe(3);
});
