import { expect, test } from 'vitest';
import { incumbent } from '../../../src/core/stock/incumbent.js';
import { cuttingOf } from './support.js';

test('keeps what leaves less out or costs less, and tells of each better plan and bound once', () => {
  const cutting = cuttingOf({ sizes: [40], demands: [3], capacities: [100] });
  const two = { stock: 0, items: [0], counts: [2] };
  const one = { stock: 0, items: [0], counts: [1] };
  let told = 0;
  const best = incumbent(cutting, () => told++);
  best.raise(1);
  expect(told).toBe(0);
  expect(best.offer({ runs: [{ pattern: two, bars: 1 }], short: [1] })).toBe(true);
  expect(best.offer({ runs: [{ pattern: one, bars: 3 }], short: [0] })).toBe(true);
  expect(best.offer({ runs: [{ pattern: two, bars: 1 }], short: [1] })).toBe(false);
  expect(best.isDone()).toBe(false);
  const last = {
    runs: [
      { pattern: two, bars: 1 },
      { pattern: one, bars: 1 },
    ],
    short: [0],
  };
  expect(best.offer(last)).toBe(true);
  expect(best.offer(last)).toBe(false);
  best.raise(2);
  best.raise(1);
  expect([told, best.bound, best.isDone()]).toEqual([4, 2, true]);
});
