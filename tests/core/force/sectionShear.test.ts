import { describe, expect, it } from 'vitest';
import { sectionShearForceN } from '../../../src/core/force/sectionShear.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const degree = Math.PI / 180;
const square = { areaMm2: 1000, shearStrengthMPa: 345, miterRad: 0 };

describe('sectionShearForceN: arguments', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses an area or a strength of %d', (bad) => {
    expect(refusal(() => sectionShearForceN({ ...square, areaMm2: bad })).argument).toBe('Area');
    expect(refusal(() => sectionShearForceN({ ...square, shearStrengthMPa: bad })).argument).toBe(
      'Shear strength',
    );
  });
});

describe('sectionShearForceN: limits', () => {
  it.each([-75, 75])('accepts a miter of %d°', (miter) => {
    expect(sectionShearForceN({ ...square, miterRad: miter * degree })).toBeGreaterThan(345_000);
  });

  it.each([-75.1, 75.1, 90, Number.NaN])('refuses a miter of %d°', (miter) => {
    expect(refusal(() => sectionShearForceN({ ...square, miterRad: miter * degree })).argument).toBe('Miter');
  });
});

describe('sectionShearForceN: values', () => {
  it.each([
    [0, 345_000],
    [45, 487_903.68],
    [60, 690_000],
    [-60, 690_000],
  ])('at %d° is %d N', (miter, forceN) => {
    expect(sectionShearForceN({ ...square, miterRad: miter * degree })).toBeCloseTo(forceN, 2);
  });

  it.each([0, 45])('shows its working at %d°', (miter) => {
    expectWorking((working) => sectionShearForceN({ ...square, miterRad: miter * degree }, working));
  });
});
