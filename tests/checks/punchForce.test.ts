import { describe, expect, it } from 'vitest';
import { punchForceN } from '../../src/core/force/punch.js';
import { findGrade } from '../../src/core/material/findGrade.js';
import { shearStrengthMPa } from '../../src/core/material/shearStrength.js';
import { mmPerInch, newtonPerUsTon } from '../../src/core/quantity/units.js';
import { expectPrinted } from '../support/printed.js';

describe('Punching force', () => {
  it('Groover, Fundamentals of Modern Manufacturing, blanking example: Ø150, 3.2 mm, 310 MPa (digits from memory)', () => {
    const forceN = punchForceN({ cutPerimeterMm: Math.PI * 150, thicknessMm: 3.2, shearStrengthMPa: 310 });
    expectPrinted(forceN, '467469');
  });

  it('Kalpakjian & Schmid, punching example: Ø25, 3.2 mm, 0.7 × 1000 MPa, about 176 kN (digits from memory)', () => {
    const forceN = punchForceN({
      cutPerimeterMm: Math.PI * 25,
      thicknessMm: 3.2,
      shearStrengthMPa: 0.7 * 1000,
    });
    expectPrinted(forceN / 1000, '176');
  });

  it.each([
    [13 / 16, 3 / 8],
    [1, 1 / 2],
    [9 / 16, 1 / 4],
  ])(
    'rule of thumb for mild steel, US tons = 80 · d · t: Ø%d in through %d in (common practice, no source)',
    (d, t) => {
      const thicknessMm = t * mmPerInch;
      const tau = shearStrengthMPa({ grade: findGrade('Mild', 'Grade'), thicknessMm, shearRatio: 0.75 });
      const forceN = punchForceN({
        cutPerimeterMm: Math.PI * d * mmPerInch,
        thicknessMm,
        shearStrengthMPa: tau,
      });
      const perSize = forceN / newtonPerUsTon / (d * t);
      expectPrinted(perSize, '78.54');
      expect(perSize / 80).toBeGreaterThan(0.98);
      expect(perSize / 80).toBeLessThanOrEqual(1);
    },
  );

  it('a hand calculation: 50 ksi, 1 in square hole through 1/2 in is 4 · 0.5 · 50 = 100 kip, 50 US tons', () => {
    const tau = shearStrengthMPa({ grade: findGrade('Mild', 'Grade'), thicknessMm: 12.7, shearRatio: 0.75 });
    const forceN = punchForceN({ cutPerimeterMm: 4 * 25.4, thicknessMm: 12.7, shearStrengthMPa: tau });
    expectPrinted(forceN / newtonPerUsTon, '50.000000');
  });
});
