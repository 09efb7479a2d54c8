import { describe, expect, it } from 'vitest';
import { findGrade } from '../../../src/core/material/findGrade.js';
import { readGrade } from '../../../src/core/material/readGrade.js';
import { totalDieClearanceMm } from '../../../src/core/tooling/dieClearance.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const a36 = findGrade('A36', 'Grade');
const inch = 25.4;
const plate = (thicknessMm: number) => totalDieClearanceMm({ thicknessMm, method: 'plate', grade: a36 });
const allowance = (name: string) =>
  totalDieClearanceMm({ thicknessMm: 1, method: 'sheet', grade: readGrade(name, 'Grade') }) / 2;

describe('totalDieClearanceMm: arguments', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a thickness of %d', (thicknessMm) => {
    for (const method of ['plate', 'sheet'] as const) {
      expect(refusal(() => totalDieClearanceMm({ thicknessMm, method, grade: a36 })).argument).toBe(
        'Thickness',
      );
    }
  });
});

describe('totalDieClearanceMm: limits', () => {
  it.each([
    [inch / 8, inch / 64],
    [3.2, inch / 64],
    [3.3, inch / 32],
    [inch / 2, inch / 32],
    [12.8, inch / 16],
  ])('of a plate of %d mm is %d mm', (thicknessMm, totalMm) => {
    expect(plate(thicknessMm)).toBeCloseTo(totalMm, 9);
  });

  it('outside the usual range is a caution, not a refusal', () => {
    const cautions = (thicknessMm: number) =>
      expectWorking((working) =>
        totalDieClearanceMm({ thicknessMm, method: 'plate', grade: a36 }, working),
      ).at(-1)?.cautions ?? [];
    expect(cautions(inch / 16)).toHaveLength(0);
    expect(cautions(1.5)).toHaveLength(1);
    expect(cautions(31)).toHaveLength(0);
    expect(cautions(33)).toHaveLength(1);
  });
});

describe('totalDieClearanceMm: values', () => {
  it.each([
    ['A36', 0.075],
    ['A514', 0.075],
    ['Mild', 0.075],
    ['shear 299 MPa', 0.06],
    ['shear 300 MPa', 0.075],
    ['304', 0.06],
    ['6061-T6', 0.06],
    ['5052-H32', 0.045],
    ['3003-H14', 0.045],
    ['Brass C260', 0.06],
    ['Copper C110', 0.06],
  ])('by the sheet method the allowance per side of %s is %d', (name, share) => {
    expect(allowance(name)).toBeCloseTo(share, 9);
  });

  it.each(['plate', 'sheet'] as const)('shows its working by the %s method', (method) => {
    expectWorking((working) => totalDieClearanceMm({ thicknessMm: 6, method, grade: a36 }, working));
  });
});
