import { describe, expect, it } from 'vitest';
import { edgeCodes } from '../../../src/core/rule/edgeDistance.js';
import { greatestEdgeDistanceMm } from '../../../src/core/rule/greatestEdge.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

describe('greatestEdgeDistanceMm: arguments', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a thickness of %d', (thicknessMm) => {
    for (const code of edgeCodes) {
      const input = { thicknessMm, code, system: 'mm' } as const;
      expect(refusal(() => greatestEdgeDistanceMm(input)).argument).toBe('Thickness');
    }
  });
});

describe('greatestEdgeDistanceMm: limits', () => {
  it('stops at 6 in for inch bolts and at 150 mm for metric ones', () => {
    const at = (thicknessMm: number, system: 'in' | 'mm') =>
      greatestEdgeDistanceMm({ thicknessMm, code: 'AISC', system });
    expect(at(12.5, 'mm')).toBe(150);
    expect(at(13, 'mm')).toBe(150);
    expect(at(12.4, 'mm')).toBeCloseTo(148.8, 9);
    expect(at(12.7, 'in')).toBeCloseTo(152.4, 9);
    expect(at(25.4, 'in')).toBeCloseTo(152.4, 9);
  });

  it('never stops under EN', () => {
    expect(greatestEdgeDistanceMm({ thicknessMm: 100, code: 'EN', system: 'mm' })).toBe(440);
  });
});

describe('greatestEdgeDistanceMm: values', () => {
  it.each([
    ['AISC', 120, 'AISC 360-22 J3.6'],
    ['AISC 360-22', 120, 'AISC 360-22 J3.6'],
    ['CSA', 120, 'CSA S16'],
    ['AS', 120, 'AS 4100'],
    ['EN', 80, 'EN 1993-1-8 Table 3.3'],
  ] as const)('of 10 mm under %s: %d mm, with its working, by %s', (code, edgeMm, source) => {
    const input = { thicknessMm: 10, code, system: 'mm' } as const;
    const steps = expectWorking((working) => greatestEdgeDistanceMm(input, working));
    expect(steps[0]?.result.value).toBe(edgeMm);
    expect(steps[0]?.source).toContain(source);
  });
});
