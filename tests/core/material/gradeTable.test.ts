import { describe, expect, it } from 'vitest';
import { builtInGrades } from '../../../src/core/material/gradeTable.js';

describe('builtInGrades', () => {
  it('has names that differ', () => {
    expect(new Set(builtInGrades.map((grade) => grade.name)).size).toBe(builtInGrades.length);
  });

  it.each(builtInGrades.map((grade) => [grade.name, grade] as const))(
    '%s can give a force: a shear strength or an upper tensile strength, and a source',
    (_name, grade) => {
      expect(grade.shearMPa ?? grade.tensileUpperMPa).toBeGreaterThan(0);
      expect(grade.source).not.toBe('');
      expect(grade.densityKgPerM3).toBeGreaterThan(2000);
    },
  );

  it.each(builtInGrades.map((grade) => [grade.name, grade] as const))(
    '%s has bounds in order',
    (_name, { tensileMinMPa, tensileUpperMPa, thinTensileUpperMPa }) => {
      if (tensileMinMPa !== undefined && tensileUpperMPa !== undefined) {
        expect(tensileUpperMPa).toBeGreaterThanOrEqual(tensileMinMPa);
      }
      expect(thinTensileUpperMPa ?? Infinity).toBeGreaterThan(tensileUpperMPa ?? 0);
    },
  );
});
