import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bendForceN } from '../../../src/core/force/bend.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const bend = { tensileMPa: 500, lengthMm: 300, thicknessMm: 6, veeMm: 60 };
const size = fc.double({ min: 1, max: 100, noNaN: true });

describe('bendForceN: arguments', () => {
  it.each([
    ['tensileMPa', 'Tensile strength'],
    ['lengthMm', 'Length'],
    ['thicknessMm', 'Thickness'],
    ['veeMm', 'V opening'],
  ])('refuses a %s that is not above zero or not finite', (name, argument) => {
    for (const bad of [0, -1, Number.NaN, Infinity]) {
      expect(refusal(() => bendForceN({ ...bend, [name]: bad })).argument).toBe(argument);
    }
  });
});

describe('bendForceN: limits', () => {
  it('refuses an opening no wider than the thickness', () => {
    expect(refusal(() => bendForceN({ ...bend, veeMm: 6 })).argument).toBe('V opening');
    expect(bendForceN({ ...bend, veeMm: 6.01 })).toBeGreaterThan(0);
  });
});

describe('bendForceN: values', () => {
  it('is K · Rm · L · t² / V', () => {
    expect(bendForceN(bend)).toBeCloseTo(119_700, 6);
  });

  it('grows with strength, length and the square of the thickness, falls with the opening', () => {
    fc.assert(
      fc.property(size, size, (lengthMm, thicknessMm) => {
        const input = { tensileMPa: 500, lengthMm, thicknessMm, veeMm: 10 * thicknessMm };
        const force = bendForceN(input);
        expect(bendForceN({ ...input, tensileMPa: 1000 }) / force).toBeCloseTo(2, 9);
        expect(bendForceN({ ...input, lengthMm: 2 * lengthMm }) / force).toBeCloseTo(2, 9);
        expect(bendForceN({ ...input, thicknessMm: 2 * thicknessMm }) / force).toBeCloseTo(4, 9);
        expect(bendForceN({ ...input, veeMm: 20 * thicknessMm }) / force).toBeCloseTo(0.5, 9);
      }),
    );
  });

  it('shows its working', () => {
    expect(expectWorking((working) => bendForceN(bend, working))).toHaveLength(1);
  });
});
