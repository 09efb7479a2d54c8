import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLength, formatNumber } from '../../../src/core/quantity/formatLength.js';
import { readLength } from '../../../src/core/quantity/readLength.js';

describe('formatLength', () => {
  it.each([
    [9.525, '3/8'],
    [30.1625, '1-3/16'],
    [25.4, '1'],
    [25.4 / 64, '1/64'],
    [0, '0'],
    [20, '0.787'],
    [304.8, '12'],
  ])('writes %d mm in inches as %s', (lengthMm, text) => {
    expect(formatLength(lengthMm, 'in')).toBe(text);
  });

  it('writes a fraction within 0.0005 in of it and a decimal beyond', () => {
    expect(formatLength(25.4 * 0.3754, 'in')).toBe('3/8');
    expect(formatLength(25.4 * 0.3756, 'in')).toBe('0.376');
  });

  it.each([
    [30, '30'],
    [12.7, '12.7'],
    [9.525, '9.53'],
  ])('writes %d mm in mm as %s', (lengthMm, text) => {
    expect(formatLength(lengthMm, 'mm')).toBe(text);
  });

  it('writes every 64th so that it is read back the same', () => {
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 64_000 }), (parts) => {
        const lengthMm = (parts / 64) * 25.4;
        expect(readLength(formatLength(lengthMm, 'in'), 'Length', 'in')).toBeCloseTo(lengthMm, 9);
      }),
    );
  });
});

describe('formatNumber', () => {
  it.each([
    [1.5, 2, '1.5'],
    [2, 2, '2'],
    [1.005, 1, '1'],
    [1234.5678, 3, '1234.568'],
  ])('writes %d with at most %d decimals as %s', (value, decimals, text) => {
    expect(formatNumber(value, decimals)).toBe(text);
  });
});
