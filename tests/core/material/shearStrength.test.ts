import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findGrade } from '../../../src/core/material/findGrade.js';
import type { Grade } from '../../../src/core/material/grade.js';
import { shearStrengthMPa } from '../../../src/core/material/shearStrength.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const grade: Grade = { name: 'Test', family: 'steel', densityKgPerM3: 7850, source: 'test' };

describe('shearStrengthMPa: arguments', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a thickness of %d', (thicknessMm) => {
    const input = { grade: { ...grade, shearMPa: 300 }, thicknessMm, shearRatio: 0.75 };
    expect(refusal(() => shearStrengthMPa(input)).argument).toBe('Thickness');
  });

  it('refuses a grade with a lower bound only, since a force from it would be too small', () => {
    const input = { grade: { ...grade, tensileMinMPa: 450 }, thicknessMm: 10, shearRatio: 0.75 };
    expect(refusal(() => shearStrengthMPa(input)).problem).toContain('neither');
  });

  it('refuses a strength that is not above zero', () => {
    const input = { grade: { ...grade, shearMPa: 0 }, thicknessMm: 10, shearRatio: 0.75 };
    expect(refusal(() => shearStrengthMPa(input)).argument).toBe('Shear');
  });
});

describe('shearStrengthMPa: limits', () => {
  it.each([0.3, 1.2])('accepts a ratio of %d', (shearRatio) => {
    const input = { grade: { ...grade, tensileUpperMPa: 100 }, thicknessMm: 10, shearRatio };
    expect(shearStrengthMPa(input)).toBeCloseTo(100 * shearRatio, 10);
  });

  it.each([0.29, 1.21, Number.NaN])('refuses a ratio of %d', (shearRatio) => {
    const input = { grade: { ...grade, tensileUpperMPa: 100 }, thicknessMm: 10, shearRatio };
    expect(refusal(() => shearStrengthMPa(input)).argument).toBe('Shear ratio');
  });

  it('takes the thin bound under 3 mm and the other from 3 mm', () => {
    const s355 = findGrade('S355', 'Grade');
    expect(shearStrengthMPa({ grade: s355, thicknessMm: 2.99, shearRatio: 0.75 })).toBe(510);
    expect(shearStrengthMPa({ grade: s355, thicknessMm: 3, shearRatio: 0.75 })).toBe(472.5);
  });
});

describe('shearStrengthMPa: values', () => {
  it('prefers the shear strength a grade states', () => {
    const input = {
      grade: { ...grade, shearMPa: 310, tensileUpperMPa: 900 },
      thicknessMm: 5,
      shearRatio: 0.75,
    };
    expect(shearStrengthMPa(input)).toBe(310);
  });

  it('grows with the tensile strength', () => {
    fc.assert(
      fc.property(fc.double({ min: 100, max: 1900, noNaN: true }), (tensileUpperMPa) => {
        const at = (upper: number) =>
          shearStrengthMPa({ grade: { ...grade, tensileUpperMPa: upper }, thicknessMm: 5, shearRatio: 0.75 });
        expect(at(tensileUpperMPa + 1)).toBeGreaterThan(at(tensileUpperMPa));
      }),
    );
  });

  it('shows its working, with the source of the grade', () => {
    for (const name of ['S355', 'Mild']) {
      const of = findGrade(name, 'Grade');
      const [step] = expectWorking((working) =>
        shearStrengthMPa({ grade: of, thicknessMm: 10, shearRatio: 0.75 }, working),
      );
      expect(step?.source).toContain(of.source);
    }
  });
});
