import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sharesOfPlate } from '../../../src/core/press/sharesOfPlate.js';
import { refusal } from '../../support/refusal.js';

const part = { forceN: 480_000, plateForceN: 400_000, shearStrengthMPa: 414, referenceMPa: 345 };

describe('sharesOfPlate: arguments', () => {
  it.each([
    ['forceN', 'Force'],
    ['plateForceN', 'Force of the plate'],
    ['shearStrengthMPa', 'Shear strength'],
    ['referenceMPa', 'Reference shear strength'],
    ['ratedForceN', 'Rated force'],
  ])('refuses a %s that is not above zero', (name, argument) => {
    for (const bad of [0, -1, Number.NaN]) {
      expect(refusal(() => sharesOfPlate({ ...part, [name]: bad })).argument).toBe(argument);
    }
  });
});

describe('sharesOfPlate: values', () => {
  it("the plate's own size in A36 is 120 % of a plate for 50 ksi, all of it by the material", () => {
    const shares = sharesOfPlate(part);
    expect(shares).toMatchObject({ ofPlate: 1.2, byMaterial: 1.2, governs: 'plate' });
    expect(shares.bySize).toBeCloseTo(1, 12);
    expect(shares).not.toHaveProperty('ofRated');
  });

  it('the larger of the plate and the rated force decides', () => {
    expect(sharesOfPlate({ ...part, ratedForceN: 500_000 })).toMatchObject({
      ofRated: 0.96,
      governs: 'plate',
    });
    expect(sharesOfPlate({ ...part, ratedForceN: 300_000 })).toMatchObject({ governs: 'rated force' });
    expect(sharesOfPlate({ ...part, ratedForceN: Infinity })).toMatchObject({ ofRated: 0, governs: 'plate' });
  });

  it('size and material multiply to the share', () => {
    const size = fc.double({ min: 1, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(size, size, size, size, (forceN, plateForceN, shearStrengthMPa, referenceMPa) => {
        const shares = sharesOfPlate({ forceN, plateForceN, shearStrengthMPa, referenceMPa });
        expect((shares.bySize * shares.byMaterial) / shares.ofPlate).toBeCloseTo(1, 9);
      }),
    );
  });
});
