import { describe, expect, it } from 'vitest';
import { leastHoleMm } from '../../../src/core/tooling/leastHole.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const plate = { thicknessMm: 10, shearStrengthMPa: 345, holeToThickness: 1, punchAllowanceMPa: 1650 };

describe('leastHoleMm: arguments', () => {
  it.each([
    ['thicknessMm', 'Thickness'],
    ['shearStrengthMPa', 'Shear strength'],
    ['punchAllowanceMPa', 'Punch allowance'],
  ])('refuses a %s that is not above zero or not finite', (name, argument) => {
    for (const bad of [0, -1, Number.NaN, Infinity]) {
      expect(refusal(() => leastHoleMm({ ...plate, [name]: bad })).argument).toBe(argument);
    }
  });
});

describe('leastHoleMm: limits', () => {
  it.each([0.49, 5.1, Number.NaN])('refuses a ratio of %d', (holeToThickness) => {
    expect(refusal(() => leastHoleMm({ ...plate, holeToThickness })).argument).toBe(
      'Hole-to-thickness ratio',
    );
  });

  it.each([0.5, 5])('accepts a ratio of %d', (holeToThickness) => {
    expect(leastHoleMm({ ...plate, holeToThickness })).toBeGreaterThan(0);
  });

  it('is the thickness until four times the shear strength passes the punch allowance', () => {
    expect(leastHoleMm({ ...plate, shearStrengthMPa: 412.5 })).toBe(10);
    expect(leastHoleMm({ ...plate, shearStrengthMPa: 413 })).toBeGreaterThan(10);
  });
});

describe('leastHoleMm: values', () => {
  it.each([
    [1, 345, 10],
    [1.5, 345, 15],
    [1, 825, 20],
  ])('at ratio %d and shear strength %d MPa is %d mm', (holeToThickness, shearStrengthMPa, leastMm) => {
    expect(leastHoleMm({ ...plate, holeToThickness, shearStrengthMPa })).toBeCloseTo(leastMm, 9);
  });

  it('shows its working', () => {
    expectWorking((working) => leastHoleMm(plate, working));
  });
});
