import { describe, expect, it } from 'vitest';
import { findGrade } from '../../../src/core/material/findGrade.js';
import { bendLimits } from '../../../src/core/tooling/bendLimits.js';
import { Working } from '../../../src/core/working/working.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const bend = (name: string, thicknessMm = 6, veeMm = 60) => ({
  grade: findGrade(name, 'Grade'),
  thicknessMm,
  veeMm,
});
const cautions = (input: Parameters<typeof bendLimits>[0]) => {
  const working = new Working();
  bendLimits(input, working);
  return working.steps.flatMap((step) => step.cautions ?? []).join(' ');
};

describe('bendLimits: arguments', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a size of %d', (size) => {
    expect(refusal(() => bendLimits(bend('A36', size))).argument).toBe('Thickness');
    expect(refusal(() => bendLimits(bend('A36', 6, size))).argument).toBe('V opening');
  });
});

describe('bendLimits: limits', () => {
  it('cautions of a radius under the least of the grade', () => {
    expect(cautions(bend('A36', 6, 54))).not.toContain('crack');
    expect(cautions(bend('A36', 6, 53.9))).toContain('crack');
  });

  it('knows no least radius of A514 over 3/4 in, and says so', () => {
    expect(bendLimits(bend('A514', 19.05)).leastInsideRadiusMm).toBeCloseTo(33.3375, 9);
    expect(bendLimits(bend('A514', 19.2)).leastInsideRadiusMm).toBeUndefined();
    expect(cautions(bend('A514', 19.2))).toContain('ask the mill');
  });

  it('knows no least radius of a grade the table does not have, and says so', () => {
    expect(bendLimits(bend('S355'))).toEqual({ insideRadiusMm: 10, leastFlangeMm: 46.2 });
    expect(cautions(bend('S355'))).toContain('ask the mill');
  });
});

describe('bendLimits: values', () => {
  it.each([
    ['A36', false, false, 9],
    ['A36', true, false, 13.5],
    ['A36', false, true, 18],
    ['A36', true, true, 18],
    ['A572-50', false, false, 9],
    ['A514', false, false, 10.5],
    ['A514', true, false, 15.75],
  ])('%s, along rolling %s, galvanized %s: %d mm at 6 mm', (name, alongRolling, galvanized, leastMm) => {
    const limits = bendLimits({ ...bend(name), alongRolling, galvanized });
    expect(limits.leastInsideRadiusMm).toBeCloseTo(leastMm, 9);
  });

  it('a V of 60 mm gives 10 mm of radius and needs 46.2 mm of flange', () => {
    const { insideRadiusMm, leastFlangeMm } = bendLimits(bend('A36'));
    expect(insideRadiusMm).toBe(10);
    expect(leastFlangeMm).toBeCloseTo(46.2, 9);
  });

  it('shows its working', () => {
    const steps = expectWorking((working) => bendLimits(bend('A36'), working).insideRadiusMm);
    expect(steps.map(({ title }) => title)).toEqual([
      'Least flange',
      'Least inside radius of the grade',
      'Inside radius of the bend',
    ]);
  });
});
