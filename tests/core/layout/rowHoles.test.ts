import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rowHolesMm } from '../../../src/core/layout/rowHoles.js';
import { refusal, refusalText } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const row = { lengthMm: 500, endMm: 50, count: 2, unit: 'mm' as const };

describe('rowHolesMm: arguments', () => {
  it('leaves something between the outer holes', () => {
    expect(refusalText(() => rowHolesMm({ ...row, endMm: 250 }))).toBe(
      'End: 250 mm from both ends of 500 mm leaves nothing between the first hole and the last. ' +
        'Give less than half of Length (250 mm).',
    );
    expect(refusal(() => rowHolesMm({ ...row, endMm: 300, greatestPitchMm: 50 })).argument).toBe('End');
  });

  it('takes one hole only for the middle', () => {
    expect(rowHolesMm({ ...row, endMm: 250, count: 1 })).toEqual([250]);
    expect(refusalText(() => rowHolesMm({ ...row, count: 1, unit: 'in' }))).toMatch(
      /^End: one hole cannot be 1-31\/32 in from both ends of 19\.685 in\. Give half of Length/,
    );
  });

  it('asks for no more than a thousand holes', () => {
    expect(rowHolesMm({ ...row, lengthMm: 1098, greatestPitchMm: 1 })).toHaveLength(999);
    expect(refusal(() => rowHolesMm({ ...row, lengthMm: 1101, greatestPitchMm: 1 }))).toMatchObject({
      argument: 'Greatest pitch',
      problem: 'a pitch of 1 mm at most asks for 1002 holes.',
    });
  });
});

describe('rowHolesMm: limits', () => {
  it('has more holes only where the pitch would be greater', () => {
    expect(rowHolesMm({ ...row, greatestPitchMm: 200 })).toEqual([50, 250, 450]);
    expect(rowHolesMm({ ...row, greatestPitchMm: 199.9 })).toHaveLength(4);
    expect(rowHolesMm({ ...row, count: 5, greatestPitchMm: 200 })).toEqual([50, 150, 250, 350, 450]);
  });

  it('takes a pitch that is the greatest but for rounding', () => {
    // 118.2 in over three spaces of 39.4 in: the conversion leaves digits behind.
    const inches = { lengthMm: 124.2 * 25.4, endMm: 3 * 25.4, greatestPitchMm: 39.4 * 25.4 };
    expect(rowHolesMm({ ...row, ...inches })).toHaveLength(4);
  });
});

describe('rowHolesMm: values', () => {
  it('are even, from end to end, with no pitch over the greatest and one hole less would have', () => {
    const size = fc.integer({ min: 1, max: 4000 });
    fc.assert(
      fc.property(
        size,
        fc.integer({ min: 5, max: 200 }),
        fc.integer({ min: 2, max: 30 }),
        fc.integer({ min: 20, max: 900 }),
        (between, endMm, count, greatestPitchMm) => {
          const lengthMm = between + 2 * endMm;
          const places = rowHolesMm({ lengthMm, endMm, count, greatestPitchMm, unit: 'mm' });
          expect(places[0]).toBe(endMm);
          expect(places.at(-1)).toBeCloseTo(lengthMm - endMm, 9);
          const spaces = places.slice(1).map((at, before) => at - (places[before] ?? NaN));
          for (const space of spaces) expect(space).toBeCloseTo(between / spaces.length, 6);
          expect(Math.max(...spaces)).toBeLessThanOrEqual(greatestPitchMm + 1e-6);
          if (places.length > count) expect(between / (spaces.length - 1)).toBeGreaterThan(greatestPitchMm);
        },
      ),
    );
  });

  it('show their working', () => {
    const steps = expectWorking((working) => rowHolesMm({ ...row, greatestPitchMm: 150 }, working).length);
    expect(steps.map(({ title }) => title)).toEqual(['Pitch', 'Holes']);
    expect(steps[0]?.cautions).toEqual(['2 more than 2, for the pitch.']);
  });
});
