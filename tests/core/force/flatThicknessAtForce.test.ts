import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatBarShearForceN } from '../../../src/core/force/flatBarShear.js';
import { flatThicknessAtForceMm } from '../../../src/core/force/flatThicknessAtForce.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const degree = Math.PI / 180;
const blade = { forceN: 345_000, widthMm: 100, shearStrengthMPa: 345, rakeRad: 0 };

describe('flatThicknessAtForceMm: arguments', () => {
  it.each([
    ['forceN', 'Force'],
    ['widthMm', 'Width'],
    ['shearStrengthMPa', 'Shear strength'],
  ])('refuses a %s that is not above zero or not finite', (name, argument) => {
    for (const bad of [0, -1, Number.NaN, Infinity]) {
      expect(refusal(() => flatThicknessAtForceMm({ ...blade, [name]: bad })).argument).toBe(argument);
    }
  });
});

describe('flatThicknessAtForceMm: limits', () => {
  it.each([-0.001, 30.01 * degree])('refuses a rake of %d rad', (rakeRad) => {
    expect(refusal(() => flatThicknessAtForceMm({ ...blade, rakeRad })).argument).toBe('Rake');
  });

  it('has no jump where the bar becomes as narrow as the engaged length', () => {
    const rakeRad = 4 * degree;
    const thicknessMm = 10;
    const engagedMm = thicknessMm / Math.tan(rakeRad);
    const forceN = flatBarShearForceN({
      widthMm: 2 * engagedMm,
      thicknessMm,
      shearStrengthMPa: 345,
      rakeRad,
    });
    for (const widthMm of [engagedMm * (1 - 1e-9), engagedMm * (1 + 1e-9)]) {
      const at = flatThicknessAtForceMm({ forceN, widthMm, shearStrengthMPa: 345, rakeRad });
      expect(at).toBeCloseTo(thicknessMm, 6);
    }
  });
});

describe('flatThicknessAtForceMm: values', () => {
  it('without rake is force over width and strength', () => {
    expect(flatThicknessAtForceMm(blade)).toBe(10);
  });

  it('gives back the thickness whose force it was given', () => {
    const size = fc.double({ min: 1, max: 100, noNaN: true });
    const rake = fc.double({ min: 0, max: 15 * degree, noNaN: true });
    fc.assert(
      fc.property(size, size, rake, (widthMm, thicknessMm, rakeRad) => {
        const bar = { widthMm, shearStrengthMPa: 345, rakeRad };
        const forceN = flatBarShearForceN({ ...bar, thicknessMm });
        expect(flatThicknessAtForceMm({ ...bar, forceN }) / thicknessMm).toBeCloseTo(1, 9);
      }),
    );
  });

  it.each([0, 3, 12])('shows its working at %d°', (rake) => {
    expectWorking((working) => flatThicknessAtForceMm({ ...blade, rakeRad: rake * degree }, working));
  });
});
