import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { punchForceN } from '../../../src/core/force/punch.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const hole = { cutPerimeterMm: 100, thicknessMm: 10, shearStrengthMPa: 300 };
const size = fc.double({ min: 1, max: 300, noNaN: true });

describe('punchForceN: arguments', () => {
  it.each([
    ['cutPerimeterMm', 'Cut perimeter'],
    ['thicknessMm', 'Thickness'],
    ['shearStrengthMPa', 'Shear strength'],
  ])('refuses a %s that is not above zero or not finite', (name, argument) => {
    for (const bad of [0, -1, Number.NaN, Infinity]) {
      expect(refusal(() => punchForceN({ ...hole, [name]: bad })).argument).toBe(argument);
    }
  });

  it.each([0, -1, 1.5, 100, Number.NaN])('refuses a count of %d', (count) => {
    expect(refusal(() => punchForceN({ ...hole, count })).argument).toBe('Count');
  });

  it.each([-0.1, Number.NaN, Infinity])('refuses shear of %d on the punch', (punchShearMm) => {
    expect(refusal(() => punchForceN({ ...hole, punchShearMm })).argument).toBe('Shear on the punch');
  });
});

describe('punchForceN: limits', () => {
  it.each([1, 99])('accepts a count of %d', (count) => {
    expect(punchForceN({ ...hole, count })).toBe(300_000 * count);
  });

  it('credits shear on the punch from the travel to break on, down to half the force and no further', () => {
    // k · t = 3.8 mm: the whole force up to s = 3.8 mm, half of it from s = 7.6 mm.
    expect(punchForceN({ ...hole, punchShearMm: 3.8 })).toBeCloseTo(300_000, 6);
    expect(punchForceN({ ...hole, punchShearMm: 3.9 })).toBeLessThan(300_000);
    expect(punchForceN({ ...hole, punchShearMm: 7.5 })).toBeGreaterThan(150_000);
    expect(punchForceN({ ...hole, punchShearMm: 7.6 })).toBeCloseTo(150_000, 6);
    expect(punchForceN({ ...hole, punchShearMm: 20 })).toBe(150_000);
  });
});

describe('punchForceN: values', () => {
  it('is perimeter × thickness × shear strength', () => {
    expect(punchForceN(hole)).toBe(300_000);
  });

  it('credits shear of one and a half travels to break with two thirds', () => {
    expect(punchForceN({ ...hole, punchShearMm: 5.7 })).toBeCloseTo(200_000, 6);
  });

  it('grows with thickness, perimeter and strength', () => {
    fc.assert(
      fc.property(size, size, size, (cutPerimeterMm, thicknessMm, shearStrengthMPa) => {
        const input = { cutPerimeterMm, thicknessMm, shearStrengthMPa };
        const force = punchForceN(input);
        expect(punchForceN({ ...input, thicknessMm: thicknessMm * 1.01 })).toBeGreaterThan(force);
        expect(punchForceN({ ...input, cutPerimeterMm: cutPerimeterMm * 1.01 })).toBeGreaterThan(force);
        expect(punchForceN({ ...input, shearStrengthMPa: shearStrengthMPa * 1.01 })).toBeGreaterThan(force);
      }),
    );
  });

  it('never grows with shear on the punch', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0, max: 20, noNaN: true }), (thicknessMm, punchShearMm) => {
        const plain = punchForceN({ ...hole, thicknessMm });
        const ground = punchForceN({ ...hole, thicknessMm, punchShearMm });
        expect(ground).toBeLessThanOrEqual(plain);
        expect(ground).toBeGreaterThanOrEqual(plain / 2);
      }),
    );
  });

  it('shows its working, with a step for the shear on the punch', () => {
    expect(expectWorking((working) => punchForceN(hole, working))).toHaveLength(1);
    expect(expectWorking((working) => punchForceN({ ...hole, count: 3 }, working))).toHaveLength(1);
    const steps = expectWorking((working) => punchForceN({ ...hole, punchShearMm: 2 }, working));
    expect(steps.map((step) => step.title)).toEqual(['Shear ground on the punch', 'Punching force']);
  });
});
