import { describe, expect, it } from 'vitest';
import { expectPrinted } from '../../support/printed.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const sheet = new SheetRuntime();

describe('HOLEMIN', () => {
  it.each([
    ['A36', '1.0'],
    ['A572-50', '1.06'],
    ['304', '1.25'],
    ['A514', '1.63'],
    ['Mild', '1.0'],
  ])('%s: %s times the thickness (common practice, no source)', (grade, multiple) => {
    expectPrinted(sheet.number('HOLEMIN', '1/2', grade) / 0.5, multiple);
    expectPrinted(sheet.number('HOLEMIN', '12 mm', grade, 'mm') / 12, multiple);
  });
});

describe('DIECLEARANCE', () => {
  it('Groover, Fundamentals of Modern Manufacturing: 3.2 mm, allowance 0.075 for harder steel, 0.48 mm in all (digits from memory)', () => {
    expectPrinted(sheet.number('DIECLEARANCE', 3.2, 'shear 310 MPa', 'mm', 'sheet'), '0.48');
  });

  it.each([
    ['5052-H32', 0.045],
    ['6061-T6', 0.06],
    ['brass c260', 0.06],
    ['304', 0.06],
    ['A36', 0.075],
  ])(
    'Groover, allowances by material: %s %d per side (from memory; which grade is which: common practice)',
    (grade, a) => {
      expect(sheet.number('DIECLEARANCE', 2, grade, 'mm', 'sheet')).toBeCloseTo(2 * a * 2, 12);
    },
  );

  it.each([
    ['1/16', 1 / 64],
    ['1/8', 1 / 64],
    ['9/64', 1 / 32],
    ['1/2', 1 / 32],
    ['33/64', 1 / 16],
    ['1', 1 / 16],
  ])('plate and structural work: %s in takes %d in all (common practice, no source)', (thickness, total) => {
    expect(sheet.number('DIECLEARANCE', thickness, 'A36')).toBeCloseTo(total, 12);
  });
});

describe('EDGEMIN', () => {
  it.each([
    ['AISC 360-22 Table J3.4 (checked against a reprint)', ['3/4', 'in', 'rolled'], 1],
    ['AISC 360-22 Table J3.4 (checked against a reprint)', ['7/8', 'in', 'sheared', 'AISC 360-22'], 1.125],
    ['AISC 360-22 Table J3.4, 1.25 d (checked against a reprint)', ['1-1/2', 'in', 'rolled'], 1.875],
    ['AISC 360-05 Table J3.4, sheared (checked against a reprint)', ['3/4', 'in'], 1.25],
    ['AISC 360-05 Table J3.4, sheared (checked against a reprint)', ['1', 'in', 'sheared'], 1.75],
    ['AISC 360-05 Table J3.4, 1.75 d (checked against a reprint)', ['1-1/2', 'in'], 2.625],
    [
      'AISC 360-22 Tables J3.4, J3.5, oversize (checked against a reprint)',
      ['3/4', 'in', 'rolled', 'AISC', 'oversize'],
      1.0625,
    ],
    [
      'AISC 360-22 Tables J3.4, J3.5, long slot (checked against a reprint)',
      ['3/4', 'in', 'rolled', 'AISC', 'long slot'],
      1.5625,
    ],
    ['AISC 360-22 Table J3.4M (checked against a reprint)', ['M20', 'mm', 'rolled'], 26],
    ['AISC 360-05 Table J3.4M, sheared (checked against a reprint)', ['M24', 'mm'], 42],
    ['EN 1993-1-8 Table 3.3, 1.2 × 22', ['M20', 'mm', 'sheared', 'EN'], 26.4],
    ['EN 1993-1-8 Table 3.3, slotted, 1.5 × 22', ['M20', 'mm', 'rolled', 'EN', 'long slot'], 33],
    ['CSA S16, sheared (from memory)', ['M20', 'mm', 'sheared', 'CSA'], 34],
    ['CSA S16, rolled or sawn (from memory)', ['M20', 'mm', 'machine cut', 'CSA'], 26],
    ['AS 4100, 1.75 d (from memory)', ['M20', 'mm', 'sheared', 'AS'], 35],
    ['AS 4100, 1.50 d (from memory)', ['M20', 'mm', 'machine cut', 'AS'], 30],
    ['AS 4100, 1.25 d (from memory)', ['M20', 'mm', 'rolled', 'AS'], 25],
  ] as const)('%s: %j is %d', (_, inputs, distance) => {
    expect(sheet.number('EDGEMIN', ...inputs)).toBeCloseTo(distance, 9);
  });
});
