import { describe, expect, it } from 'vitest';
import { findGrade } from '../../src/core/material/findGrade.js';
import { leastBendRadius } from '../../src/core/tooling/leastBendRadius.js';
import { leastFlangeMm } from '../../src/core/tooling/leastFlange.js';

const least = (grade: string, thicknessMm: number, how = {}) => {
  const found = leastBendRadius({ grade: findGrade(grade, 'Grade'), thicknessMm, ...how });
  if (!found.known) throw new Error(`not known: ${found.why}`);
  return found.leastMm;
};

describe('ASTM A6 Table X4.2, multiples of the thickness (checked against a reprint; groups of Table X4.1 from memory)', () => {
  const thicknesses = [19.05, 25.4, 50.8, 63.5]; // to 3/4, to 1, to 2, over 2 in
  it.each([
    ['A36', 'B', [1.5, 1.5, 1.5, 2]],
    ['A572-50', 'C', [1.5, 1.5, 2, 2.5]],
    ['A588', 'C', [1.5, 1.5, 2, 2.5]],
    ['A514', 'F', [1.75, 2.25, 4.5, 5.5]],
  ])('%s, group %s: %j', (grade, _group, multiples) => {
    thicknesses.forEach((thicknessMm, at) => {
      expect(least(grade, thicknessMm) / thicknessMm).toBeCloseTo(multiples[at] ?? Number.NaN, 9);
    });
  });

  it('footnote A: times 1.5 for bend lines along the rolling direction', () => {
    expect(least('A36', 10, { alongRolling: true })).toBeCloseTo(22.5, 9);
  });
});

describe('EN 10025-2, recommended least inside radius for cold flanging, mm (checked against a reprint)', () => {
  const thicknesses = [1.5, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20, 25, 30];
  it.each([
    ['S235', false, [1.6, 2.5, 3, 5, 6, 8, 10, 12, 16, 20, 25, 28, 36, 40, 50, 60]],
    ['S235', true, [1.6, 2.5, 3, 6, 8, 10, 12, 16, 20, 25, 28, 32, 40, 45, 55, 70]],
    ['S275', false, [2, 3, 4, 5, 8, 10, 12, 16, 20, 25, 28, 32, 40, 45, 55, 70]],
    ['S275', true, [2, 3, 4, 6, 10, 12, 16, 20, 25, 32, 36, 40, 45, 50, 60, 75]],
    ['S355', false, [2.5, 4, 5, 6, 8, 10, 12, 16, 20, 25, 32, 36, 45, 50, 65, 80]],
    ['S355', true, [2.5, 4, 5, 8, 10, 12, 16, 20, 25, 32, 36, 40, 50, 63, 75, 90]],
  ])('%s, along the rolling direction %s: %j', (grade, alongRolling, radii) => {
    expect(thicknesses.map((thicknessMm) => least(grade, thicknessMm, { alongRolling }))).toEqual(radii);
  });
});

describe('Hot-dip galvanized work (guidance of galvanizers, checked against a page)', () => {
  it('a bend of at least three times the thickness', () => {
    expect(least('A36', 10, { galvanized: true })).toBeCloseTo(30, 9);
    expect(least('S235', 10, { galvanized: true })).toBeCloseTo(30, 9);
  });
});

describe('Least flange of an air bend, 0.77 V (common practice, no source)', () => {
  it.each([
    [25, 19.25],
    [100, 77],
  ])('V %d: %d mm', (veeMm, flangeMm) => {
    expect(leastFlangeMm({ veeMm })).toBeCloseTo(flangeMm, 9);
  });
});
