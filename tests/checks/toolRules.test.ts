import { describe, it } from 'vitest';
import { findGrade } from '../../src/core/material/findGrade.js';
import { readGrade } from '../../src/core/material/readGrade.js';
import { shearStrengthMPa } from '../../src/core/material/shearStrength.js';
import { megapascalPerKsi } from '../../src/core/quantity/units.js';
import { leastWebMm } from '../../src/core/rule/pressWeb.js';
import { totalDieClearanceMm } from '../../src/core/tooling/dieClearance.js';
import { leastHoleMm } from '../../src/core/tooling/leastHole.js';
import { expectPrinted } from '../support/printed.js';

describe('Smallest hole as a multiple of the thickness (common practice, no source)', () => {
  it.each([
    ['A36', '1.00'],
    ['A572-50', '1.06'],
    ['304', '1.25'],
    ['A514', '1.63'],
  ])('%s: %s', (name, multiple) => {
    const thicknessMm = 10;
    const tau = shearStrengthMPa({ grade: findGrade(name, 'Grade'), thicknessMm, shearRatio: 0.75 });
    const punchAllowanceMPa = 240 * megapascalPerKsi;
    const leastMm = leastHoleMm({
      thicknessMm,
      shearStrengthMPa: tau,
      holeToThickness: 1,
      punchAllowanceMPa,
    });
    expectPrinted(leastMm / thicknessMm, multiple);
  });
});

describe('Total die clearance', () => {
  it('Groover, blanking example: 3.2 mm half-hard steel, a = 0.075, 0.24 per side, 0.48 total (from memory)', () => {
    const grade = readGrade('shear 310 MPa', 'Grade');
    expectPrinted(totalDieClearanceMm({ thicknessMm: 3.2, method: 'sheet', grade }), '0.48');
  });

  it.each([
    ['5052-H32', '0.045'],
    ['6061-T6', '0.060'],
    ['C260', '0.060'],
    ['304', '0.060'],
    ['A36', '0.075'],
  ])(
    'Groover, allowance per side for %s: %s (from memory; which group a grade is in: common practice)',
    (name, a) => {
      const grade = findGrade(name, 'Grade');
      expectPrinted(totalDieClearanceMm({ thicknessMm: 1, method: 'sheet', grade }) / 2, a);
    },
  );

  it.each([
    [1 / 8, '0.4', 1 / 64],
    [1 / 2, '0.8', 1 / 32],
    [3 / 4, '1.6', 1 / 16],
  ])(
    'plate and structural practice: %d in thick, %s mm (common practice, no source)',
    (thickness, mm, inches) => {
      const grade = findGrade('A36', 'Grade');
      const totalMm = totalDieClearanceMm({ thicknessMm: thickness * 25.4, method: 'plate', grade });
      expectPrinted(totalMm, mm);
      expectPrinted(totalMm / 25.4 / inches, '1.000000');
    },
  );
});

describe('Steel left beside a hole (common practice, no source)', () => {
  it.each([
    [10, 16, '10'],
    [10, 22, '11'],
  ])('%d mm thick, hole of %d mm: %s mm', (thicknessMm, holeDimensionMm, mm) => {
    expectPrinted(leastWebMm({ thicknessMm, holeDimensionMm }), mm, 1e-9);
  });
});
