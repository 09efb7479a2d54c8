import { describe, expect, it } from 'vitest';
import { findGrade } from '../../../src/core/material/findGrade.js';
import { readGrade } from '../../../src/core/material/readGrade.js';
import { upperTensileMPa } from '../../../src/core/material/upperTensile.js';
import { refusal, refusalText } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const upper = (name: string, thicknessMm = 10) =>
  upperTensileMPa({ grade: readGrade(name, 'Grade'), thicknessMm });

describe('upperTensileMPa: arguments', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a thickness of %d', (thicknessMm) => {
    expect(refusal(() => upper('A36', thicknessMm)).argument).toBe('Thickness');
  });

  it.each(['Brass C260', '6061-T6', 'shear 310 MPa'])('refuses %s, which states no upper bound', (name) => {
    expect(refusalText(() => upper(name))).toContain('has no upper tensile strength');
  });

  it('refuses a bound that is not above zero', () => {
    const grade = { ...findGrade('A36', 'Grade'), tensileUpperMPa: 0 };
    expect(refusal(() => upperTensileMPa({ grade, thicknessMm: 10 })).argument).toBe('Tensile upper');
  });
});

describe('upperTensileMPa: limits', () => {
  it('takes the bound of thin products under 3 mm, where the standard has one', () => {
    expect(upper('S355', 2.99)).toBe(680);
    expect(upper('S355', 3)).toBe(630);
    expect(upper('S235', 2)).toBe(510);
  });
});

describe('upperTensileMPa: values', () => {
  it('is the upper bound, never the minimum', () => {
    expect(upper('A36')).toBeCloseTo(551.58, 2);
    expect(upper('tensile 450 MPa')).toBe(450);
  });

  it.each([2, 10])('shows its working at %d mm', (thicknessMm) => {
    const grade = findGrade('S355', 'Grade');
    const [step] = expectWorking((working) => upperTensileMPa({ grade, thicknessMm }, working));
    expect(step?.result.meaning.includes('under 3 mm')).toBe(thicknessMm < 3);
  });
});
