import { describe, expect, it } from 'vitest';
import { fractionTurnedDate } from '../../../src/core/quantity/dateTrap.js';

describe('fractionTurnedDate', () => {
  it('is undefined outside its range and for numbers that are not whole', () => {
    expect([10_958, 47_483, 45_721.5, 0, -1, Number.NaN, Infinity].map(fractionTurnedDate)).toEqual(
      Array(7).fill(undefined),
    );
  });

  it.each([
    [10_959, '1/2', 1930],
    [36_526, '1/1', 2000],
    [45_351, '2/29', 2024],
    [45_721, '3/5', 2025],
    [47_482, '12/30', 2029],
  ])('reads the serial %d as %s of some year', (serial, fraction, year) => {
    // Day 1 of the serial numbers is 1 January 1900; 29 February 1900 is counted though it never was.
    const [month = 0, day = 0] = fraction.split('/').map(Number);
    const days = (Date.UTC(year, month - 1, day) - Date.UTC(1899, 11, 30)) / 86_400_000;
    expect(Math.abs(days - serial)).toBeLessThan(366);
    expect(fractionTurnedDate(days)).toBe(fraction);
  });
});
