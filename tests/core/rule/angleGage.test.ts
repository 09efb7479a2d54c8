import { describe, expect, it } from 'vitest';
import { angleGageMm, gageLines } from '../../../src/core/rule/angleGage.js';
import { refusal, refusalText } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const inch = 25.4;

describe('angleGageMm: arguments', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a leg of %d', (legMm) => {
    expect(refusal(() => angleGageMm({ legMm, line: 'usual' })).argument).toBe('Leg');
  });
});

describe('angleGageMm: limits', () => {
  it('has the legs of the two tables and no other', () => {
    expect(angleGageMm({ legMm: 3 * inch, line: 'usual' })).toBeCloseTo(1.75 * inch, 9);
    expect(angleGageMm({ legMm: 75, line: 'usual' })).toBe(40);
    for (const legMm of [3 * inch + 0.03, 75.03, 4.5 * inch, 9 * inch, 120]) {
      expect(refusal(() => angleGageMm({ legMm, line: 'usual' })).code).toBe('unknown');
    }
  });

  it('has two lines from 5 in', () => {
    expect(angleGageMm({ legMm: 5 * inch, line: 'second' })).toBeCloseTo(1.75 * inch, 9);
    expect(refusalText(() => angleGageMm({ legMm: 4 * inch, line: 'first' }))).toContain('4 in has one line');
    expect(refusal(() => angleGageMm({ legMm: 100, line: 'second' })).argument).toBe('Line');
  });
});

describe('angleGageMm: values', () => {
  it('every usual gage leaves an edge toward the toe', () => {
    for (const leg of [8, 7, 6, 5, 4, 3.5, 3, 2.5, 2, 1.75, 1.5, 1.375, 1.25, 1]) {
      const legMm = leg * inch;
      const gageMm = angleGageMm({ legMm, line: 'usual' });
      expect(gageMm).toBeGreaterThan(legMm / 2);
      expect(gageMm).toBeLessThan(legMm * 0.7);
    }
  });

  it.each(gageLines)('shows its working for the %s line', (line) => {
    expect(expectWorking((working) => angleGageMm({ legMm: 6 * inch, line }, working))).toHaveLength(1);
  });
});
