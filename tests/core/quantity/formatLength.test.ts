import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatLength,
  formatNumber,
  formatOnRule,
  nextSizeMm,
} from '../../../src/core/quantity/formatLength.js';
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

describe('nextSizeMm', () => {
  it.each([
    [0.664, '11/16'],
    [0.625, '5/8'],
    [0.6251, '21/32'],
    [(25.4 * (3 / 8)) / 25.4, '3/8'],
  ])('rounds %d in up to %s in', (inches, text) => {
    expect(formatLength(nextSizeMm(inches * 25.4, 'in'), 'in')).toBe(text);
  });

  it.each([
    [16.87, 17],
    [16.5, 16.5],
    [16.51, 17],
  ])('rounds %d mm up to %d mm', (mm, next) => {
    expect(nextSizeMm(mm, 'mm')).toBe(next);
  });

  it('is never under the size itself, as far as it is written', () => {
    fc.assert(
      fc.property(fc.double({ min: 2, max: 300, noNaN: true }), (mm) => {
        for (const unit of ['in', 'mm'] as const) {
          const shownMm = readLength(formatLength(nextSizeMm(mm, unit), unit), 'Length', unit);
          expect(shownMm).toBeGreaterThanOrEqual(mm * (1 - 1e-8));
          expect(shownMm - mm).toBeLessThan(0.8);
        }
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

describe('formatOnRule', () => {
  it.each([
    [0.559 * 25.4, 'in', '9/16'],
    [2, 'in', '5/64'],
    [25.4, 'in', '1'],
    [14.2, 'mm', '14'],
    [14.3, 'mm', '14.5'],
  ] as const)('writes %d mm in %s by the nearest mark, %s', (mm, unit, text) => {
    expect(formatOnRule(mm, unit)).toBe(text);
  });

  it('is never more than half a mark away', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), (mm) => {
        const inches = Math.round((mm / 25.4) * 64);
        const shown = formatOnRule(mm, 'in');
        if (inches > 0) expect(readLength(shown, 'Length', 'in')).toBeCloseTo((inches / 64) * 25.4, 9);
        expect(Math.abs(Number(formatOnRule(mm, 'mm')) - mm)).toBeLessThanOrEqual(0.25 + 1e-9);
      }),
    );
  });
});
