import { describe, expect, it } from 'vitest';
import { findGrade } from '../../src/core/material/findGrade.js';
import { shearStrengthMPa } from '../../src/core/material/shearStrength.js';
import { kilogramPerPound, megapascalPerKsi, mmPerFoot } from '../../src/core/quantity/units.js';
import { expectPrinted } from '../support/printed.js';

const ksi = (stressMPa: number | undefined) => (stressMPa ?? Number.NaN) / megapascalPerKsi;

describe('Tensile strength, ksi, and the MPa the standard prints beside it', () => {
  it.each<[string, string, string, string, string | undefined, string]>([
    ['A36', '58', '80', '400', '550', 'ASTM A36'],
    ['A572-50', '65', '85', '450', undefined, 'ASTM A572; upper bound: common practice, no source'],
    ['A529-50', '65', '100', '450', '690', 'ASTM A529 (from memory)'],
    [
      'A588',
      '70',
      '90',
      '485',
      undefined,
      'ASTM A588 (from memory); upper bound: common practice, no source',
    ],
    ['A992', '65', '85', '450', undefined, 'ASTM A992; upper bound: common practice, no source'],
    ['A514', '110', '130', '760', '895', 'ASTM A514 (from memory)'],
    ['304', '75', '100', '515', undefined, 'ASTM A240; upper bound: common practice, no source'],
    ['316', '75', '100', '515', undefined, 'ASTM A240; upper bound: common practice, no source'],
  ])('%s: %s to %s ksi', (name, least, upper, leastMPa, upperMPa) => {
    const grade = findGrade(name, 'Grade');
    expectPrinted(ksi(grade.tensileMinMPa), least, 1e-6);
    expectPrinted(ksi(grade.tensileUpperMPa), upper, 1e-6);
    // Standards round the metric figure to 5 MPa.
    expectPrinted(grade.tensileMinMPa ?? Number.NaN, leastMPa, 3);
    if (upperMPa !== undefined) expectPrinted(grade.tensileUpperMPa ?? Number.NaN, upperMPa, 3);
  });
});

describe('Tensile strength, MPa', () => {
  it.each<[string, number, number, number | undefined, string]>([
    ['S235', 360, 510, undefined, 'EN 10025-2, 3 to 100 mm'],
    ['S275', 410, 560, 580, 'EN 10025-2, 3 to 100 mm and under 3 mm'],
    ['S355', 470, 630, 680, 'EN 10025-2, 3 to 100 mm and under 3 mm'],
    ['S460', 540, 720, undefined, 'EN 10025-3 (from memory)'],
    ['300W', 450, 620, undefined, 'CSA G40.21'],
    ['350W', 450, 650, undefined, 'CSA G40.21'],
    ['S420', 520, 680, undefined, 'EN 10025-3 (from memory)'],
    ['S690QL', 770, 940, undefined, 'EN 10025-6, 3 to 50 mm (from memory)'],
    ['S355MC', 430, 550, undefined, 'EN 10149-2 (from memory)'],
    ['S700MC', 750, 950, undefined, 'EN 10149-2 (from memory)'],
    ['E295', 470, 610, undefined, 'EN 10025-2, 3 to 100 mm (from memory)'],
    ['1.4301', 520, 750, undefined, 'EN 10088-2, hot plate to cold strip (from memory)'],
    ['SS400', 400, 510, undefined, 'JIS G 3101 (from memory)'],
  ])('%s: %d to %d', (name, least, upper, thin) => {
    const grade = findGrade(name, 'Grade');
    expect([grade.tensileMinMPa, grade.tensileUpperMPa, grade.thinTensileUpperMPa]).toEqual([
      least,
      upper,
      thin,
    ]);
  });

  it('CSA G40.21 prints 65 to 90 ksi for 44W, the same steel as 300W', () => {
    expectPrinted(ksi(findGrade('44W', 'Grade').tensileMinMPa), '65');
    expectPrinted(ksi(findGrade('44W', 'Grade').tensileUpperMPa), '90');
  });
});

describe('Stated shear strength, ksi', () => {
  it.each([
    ['Mild', 50, 'common practice, no source'],
    ['304', 75, 'common practice, no source'],
    ['316', 75, 'common practice, no source'],
    ['6061-T6', 30 * 1.15, 'Aluminum Standards and Data, typical (from memory) × 1.15, common practice'],
    ['5052-H32', 20 * 1.15, 'Aluminum Standards and Data, typical (from memory) × 1.15, common practice'],
    ['3003-H14', 14 * 1.15, 'Aluminum Standards and Data, typical (from memory) × 1.15, common practice'],
    ['C260', 40, 'common practice, no source'],
    ['C110', 26, 'common practice, no source'],
  ])('%s: %d', (name, shearKsi) => {
    expect(ksi(findGrade(name, 'Grade').shearMPa)).toBeCloseTo(shearKsi, 9);
  });

  it.each([
    ['6061-T6', '42', undefined],
    ['5052-H32', '31', '38'],
    ['3003-H14', '20', '26'],
  ])('%s tensile, Aluminum Standards and Data (from memory)', (name, least, upper) => {
    const grade = findGrade(name, 'Grade');
    expectPrinted(ksi(grade.tensileMinMPa), least, 1e-6);
    if (upper === undefined) expect(grade.tensileUpperMPa).toBeUndefined();
    else expectPrinted(ksi(grade.tensileUpperMPa), upper, 1e-6);
  });
});

describe('Shear strength', () => {
  it('Kalpakjian & Schmid take 0.7 of the tensile strength: 700 MPa for 1000 MPa (from memory)', () => {
    const grade = {
      name: 'titanium',
      family: 'steel',
      tensileUpperMPa: 1000,
      densityKgPerM3: 4500,
      source: '',
    } as const;
    expect(shearStrengthMPa({ grade, thicknessMm: 3.2, shearRatio: 0.7 })).toBe(700);
  });

  it('A36 at 0.75 of 80 ksi is 60 ksi (common practice, no source)', () => {
    const input = { grade: findGrade('A36', 'Grade'), thicknessMm: 10, shearRatio: 0.75 };
    expect(ksi(shearStrengthMPa(input))).toBeCloseTo(60, 9);
  });
});

describe('Density', () => {
  it('of steel is 7850 kg/m³ and 490 lb/ft³ (EN 10025; AISC Manual)', () => {
    const { densityKgPerM3 } = findGrade('A36', 'Grade');
    expect(densityKgPerM3).toBe(7850);
    expectPrinted((densityKgPerM3 * (mmPerFoot / 1000) ** 3) / kilogramPerPound, '490');
  });

  it.each([
    ['304', 7900],
    ['6061-T6', 2700],
    ['C260', 8530],
    ['C110', 8940],
  ])('of %s is %d kg/m³ (general references, from memory)', (name, density) => {
    expect(findGrade(name, 'Grade').densityKgPerM3).toBe(density);
  });
});
