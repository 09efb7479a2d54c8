import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatBarShearForceN } from '../../../src/core/force/flatBarShear.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const degree = Math.PI / 180;
const bar = { widthMm: 100, thicknessMm: 10, shearStrengthMPa: 345, rakeRad: 0 };

describe('flatBarShearForceN: arguments', () => {
  it.each([
    ['widthMm', 'Width'],
    ['thicknessMm', 'Thickness'],
    ['shearStrengthMPa', 'Shear strength'],
  ])('refuses a %s that is not above zero or not finite', (name, argument) => {
    for (const bad of [0, -1, Number.NaN, Infinity]) {
      expect(refusal(() => flatBarShearForceN({ ...bar, [name]: bad })).argument).toBe(argument);
    }
  });
});

describe('flatBarShearForceN: limits', () => {
  it.each([-0.001, 30.01 * degree, Number.NaN])('refuses a rake of %d rad', (rakeRad) => {
    expect(refusal(() => flatBarShearForceN({ ...bar, rakeRad })).argument).toBe('Rake');
  });

  it.each([0, 30 * degree])('accepts a rake of %d rad', (rakeRad) => {
    expect(flatBarShearForceN({ ...bar, rakeRad })).toBeGreaterThan(0);
  });

  it('meets at the engaged length: no jump between a narrow and a wide bar', () => {
    const rakeRad = 4 * degree;
    const engagedMm = 10 / Math.tan(rakeRad);
    const at = (widthMm: number) => flatBarShearForceN({ ...bar, widthMm, rakeRad });
    expect(at(engagedMm * (1 - 1e-9))).toBeCloseTo(at(engagedMm * (1 + 1e-9)), 6);
    expect(at(engagedMm * 2)).toBe(at(engagedMm * 3));
    expect(at(engagedMm * 0.99)).toBeLessThan(at(engagedMm));
  });

  it('comes near the force without rake as the rake vanishes', () => {
    expect(flatBarShearForceN({ ...bar, rakeRad: 1e-9 })).toBeCloseTo(flatBarShearForceN(bar), 1);
  });
});

describe('flatBarShearForceN: values', () => {
  it('is the whole area × shear strength without rake', () => {
    expect(flatBarShearForceN(bar)).toBe(345_000);
  });

  it('is half the thickness squared over the slope for a wide bar', () => {
    expect(flatBarShearForceN({ ...bar, widthMm: 1000, rakeRad: Math.atan(0.1) })).toBeCloseTo(172_500, 6);
  });

  it('grows with thickness and strength, and never shrinks with width', () => {
    const size = fc.double({ min: 1, max: 300, noNaN: true });
    const rake = fc.double({ min: 0, max: 10 * degree, noNaN: true });
    fc.assert(
      fc.property(size, size, rake, (widthMm, thicknessMm, rakeRad) => {
        const input = { widthMm, thicknessMm, shearStrengthMPa: 345, rakeRad };
        const force = flatBarShearForceN(input);
        expect(flatBarShearForceN({ ...input, thicknessMm: thicknessMm * 1.01 })).toBeGreaterThan(force);
        expect(flatBarShearForceN({ ...input, shearStrengthMPa: 350 })).toBeGreaterThan(force);
        expect(flatBarShearForceN({ ...input, widthMm: widthMm * 1.01 })).toBeGreaterThanOrEqual(
          force * (1 - 1e-12),
        );
      }),
    );
  });

  it.each([0, 2, 12])('shows its working at %d°', (rake) => {
    expect(
      expectWorking((working) => flatBarShearForceN({ ...bar, rakeRad: rake * degree }, working)),
    ).toHaveLength(1);
  });
});
