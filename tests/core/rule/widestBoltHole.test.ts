import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { widestBoltHoleMm } from '../../../src/core/rule/widestBoltHole.js';

const inch = 25.4;

describe('the widest hole of a bolt', () => {
  // AISC Design Guide 1, second edition (2006), Table 2.3; AISC 360-22 Table J3.3 (from memory) for 5/8.
  it.each([
    [5 / 8, 13 / 16],
    [3 / 4, 1 + 5 / 16],
    [7 / 8, 1 + 9 / 16],
    [1, 1 + 13 / 16],
    [2, 3 + 1 / 4],
    [2.5, 3 + 3 / 4],
  ])('%f in: %f in', (bolt, hole) => {
    expect(widestBoltHoleMm(bolt * inch)).toBeCloseTo(hole * inch, 9);
  });
  it('is wider for a larger bolt', () => {
    const diameter = fc.double({ min: 6, max: 100, noNaN: true });
    fc.assert(
      fc.property(diameter, fc.double({ min: 0, max: 30, noNaN: true }), (mm, more) => {
        expect(widestBoltHoleMm(mm + more)).toBeGreaterThanOrEqual(widestBoltHoleMm(mm));
      }),
    );
  });
});
