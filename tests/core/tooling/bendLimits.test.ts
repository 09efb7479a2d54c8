import { describe, expect, it } from 'vitest';
import { findGrade } from '../../../src/core/material/findGrade.js';
import { bendLimits } from '../../../src/core/tooling/bendLimits.js';
import { leastBendRadius } from '../../../src/core/tooling/leastBendRadius.js';
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

  it('says that no least radius is known of a grade no table has', () => {
    expect(bendLimits(bend('304')).leastRadius).toEqual({ known: false, why: 'grade' });
    expect(cautions(bend('304'))).toContain('ask the mill');
  });

  it('says what would make the least radius larger as long as it is not given', () => {
    expect(cautions(bend('A36'))).toContain('along the rolling direction and for a part to be galvanized');
    const said = { ...bend('A36', 6, 108), alongRolling: true, galvanized: true };
    expect(cautions(said)).toBe('');
  });
});

describe('bendLimits: values', () => {
  it('a V of 60 mm gives 10 mm of radius and needs 46.2 mm of flange', () => {
    const { insideRadiusMm, leastFlangeMm } = bendLimits(bend('A36'));
    expect(insideRadiusMm).toBe(10);
    expect(leastFlangeMm).toBeCloseTo(46.2, 9);
  });

  it('has the least radius of the grade, of the direction and of the finish', () => {
    const input = { ...bend('A514'), alongRolling: true, galvanized: true };
    expect(bendLimits(input).leastRadius).toEqual(leastBendRadius(input));
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
