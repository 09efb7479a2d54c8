import { describe, expect, it } from 'vitest';
import { serialDate } from '../../src/sheet/serialDate.js';

describe('serialDate', () => {
  // Days by the calendar: 1 January 2000 is day 36,526 of both numberings of the file format's standard, ECMA-376 (from memory).
  it.each([
    [61, '1 March 1900'],
    [36_526, '1 January 2000'],
    [36_585, '29 February 2000'],
    [46_281.75, '16 September 2026'],
  ])('%d is %s', (serial, text) => {
    expect(serialDate(serial).text).toBe(text);
  });

  it('has the parts of the date, months from 1', () => {
    expect(serialDate(46_281)).toMatchObject({ day: 16, month: 9, year: 2026 });
  });
});
