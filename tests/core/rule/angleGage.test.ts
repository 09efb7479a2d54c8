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

describe('angleGageMm: what a refusal says', () => {
  it('names the legs of both tables, each in its unit', () => {
    const text = refusalText(() => angleGageMm({ legMm: 3.25 * inch, line: 'usual' }));
    expect(text).toContain('a leg of 82.55 mm (3-1/4 in)');
    expect(text).toContain('Legs in the tables: 8, 7, 6, 5, 4, 3-1/2, 3, 2-1/2, 2, 1-3/4, 1-1/2,');
    expect(text).toMatch(/ 1 in; 25, 30, 35, .*, 180, 200 mm\.$/);
  });

  it('tells the lines that a leg has', () => {
    expect(refusalText(() => angleGageMm({ legMm: 120, line: 'usual' }))).toBe(
      'Line: a leg of 120 mm has two lines of holes in the table. Write first or second, or give the gage itself.',
    );
    expect(refusalText(() => angleGageMm({ legMm: 100, line: 'first' }))).toBe(
      'Line: a leg of 100 mm has one line of holes in the table. Write usual, or give a leg of 5 in or more, or over 100 mm.',
    );
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

  it('every usual gage of a metric leg, and every pair of lines, leaves an edge toward the toe', () => {
    for (const legMm of [25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 90, 100]) {
      const gageMm = angleGageMm({ legMm, line: 'usual' });
      expect(gageMm).toBeGreaterThan(legMm / 2);
      expect(gageMm).toBeLessThan(legMm * 0.7);
    }
    const metric = [110, 120, 130, 140, 150, 160, 180, 200];
    for (const legMm of [...metric, 5 * inch, 6 * inch, 7 * inch, 8 * inch]) {
      const [first, second] = (['first', 'second'] as const).map((line) => angleGageMm({ legMm, line }));
      expect(first).toBeGreaterThan(legMm * 0.3);
      expect((first ?? NaN) + (second ?? NaN)).toBeGreaterThan(legMm * 0.6);
      expect((first ?? NaN) + (second ?? NaN)).toBeLessThan(legMm * 0.8);
    }
  });

  it.each(gageLines)('shows its working for the %s line', (line) => {
    expect(expectWorking((working) => angleGageMm({ legMm: 6 * inch, line }, working))).toHaveLength(1);
  });

  it.each([
    [6 * inch, 'usual', 'Usual gage', 'from the heel', 'AISC'],
    [6 * inch, 'first', 'Gage of the first line', 'from the heel', 'AISC'],
    [6 * inch, 'second', 'Gage of the second line', 'from the first line', 'AISC'],
    [110, 'second', 'Gage of the second line', 'from the first line', 'DIN 997'],
  ] as const)('of a leg of %d mm say for the %s line: %s, %s', (legMm, line, title, meaning, source) => {
    const [step] = expectWorking((working) => angleGageMm({ legMm, line }, working));
    expect(step?.title).toBe(title);
    expect(step?.result.meaning).toBe(meaning);
    expect(step?.source).toContain(source);
    expect(step?.values.map(({ symbol, value }) => [symbol, value])).toEqual([['leg', legMm]]);
  });
});
