import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { percentDigits, percentText } from '../../../src/core/quantity/percentText.js';

describe('a share in percent', () => {
  it('is the same for a number and for the 15 digits of it that a cell holds', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 3000 }), fc.integer({ min: -4, max: 4 }), (thousandths, ulps) => {
        const share = thousandths / 1000;
        const off = share * (1 + ulps * Number.EPSILON);
        expect(percentDigits(off)).toBe(percentDigits(Number(off.toPrecision(15))));
      }),
    );
  });

  it('rounds halves up, as a cell does', () => {
    const texts = [0.675, 0.67499999999999993, 0.6749, 1.005, 0.005].map((share) => percentText(share));
    expect(texts).toEqual(['68%', '68%', '67%', '101%', '1%']);
    expect(percentDigits(0.80349999999999999, 1)).toBe('80.4');
  });

  it('never says that something is nothing', () => {
    expect([percentText(0), percentText(0.0004)]).toEqual(['0%', 'under 1%']);
  });
});
