import { describe, expect, it } from 'vitest';
import { turnedDate } from '../../../src/core/quantity/dateTrap.js';

/** Day 1 of the serial numbers is 1 January 1900; 29 February 1900 is counted though it never was. */
function serialOf(year: number, month: number, day: number): number | undefined {
  const date = new Date(Date.UTC(year, month - 1, day));
  const exists =
    date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return exists ? (date.getTime() - Date.UTC(1899, 11, 30)) / 86_400_000 : undefined;
}

type Order = 'month first' | 'day first';
const currentYear = 2026;

/** What a host makes of typed text: two numbers are month and day, else month and year; three are a whole date. */
function hostSerial(typed: string, order: Order, firstOfLastCentury = 30): number | undefined {
  const [a = 0, b = 0, c] = typed.split(/[-/]/).map(Number);
  const century = (year: number) => (year < firstOfLastCentury ? 2000 + year : 1900 + year);
  const [month, day] = order === 'month first' ? [a, b] : [b, a];
  if (c !== undefined) return serialOf(century(c), month, day);
  return serialOf(currentYear, month, day) ?? (b > 31 && b < 100 ? serialOf(century(b), a, 1) : undefined);
}

/** Every fraction and mixed number in lowest terms, from 1/64 to 31-63/64. */
const sizes = [2, 4, 8, 16, 32, 64].flatMap((under) =>
  Array.from({ length: under / 2 }, (_, index) => `${2 * index + 1}/${under}`).flatMap((part) => [
    part,
    ...Array.from({ length: 31 }, (_, index) => `${index + 1}-${part}`),
  ]),
);

describe('turnedDate', () => {
  it('is undefined outside its range and for numbers that are not whole', () => {
    expect([10_958, 60_268, 45_721.5, 0, -1, Number.NaN, Infinity].map(turnedDate)).toEqual(
      Array(7).fill(undefined),
    );
  });

  it.each([
    [10_959, '1 January 1930', []],
    [11_749, '1 March 1932', ['3-1/32', '3/32', '1-3/32']],
    [36_526, '1 January 2000', []],
    [42_370, '1 January 2016', ['1-1/16']],
    [42_372, '3 January 2016', ['1-3/16', '3-1/16']],
    [42_447, '18 March 2016', ['18-3/16']],
    [42_404, '4 February 2016', []],
    [45_351, '29 February 2024', []],
    [45_724, '8 March 2025', ['3/8']],
    [47_482, '30 December 2029', []],
    [48_214, '1 January 2032', ['1-1/32', '1/32']],
    [60_267, '31 December 2064', ['12-31/64']],
  ])('reads the serial %d as %s, from %j', (serial, date, readings) => {
    expect(turnedDate(serial)).toEqual({ date, readings });
  });

  it.each<[Order, number]>([
    ['month first', 400],
    ['day first', 400],
  ])('has the size that was typed among its readings, %s', (order, least) => {
    const turned = sizes.flatMap((typed) => {
      const serial = hostSerial(typed, order);
      return serial === undefined ? [] : [{ typed, readings: turnedDate(serial)?.readings ?? [] }];
    });
    expect(turned.length).toBeGreaterThan(least);
    for (const { typed, readings } of turned) {
      expect(readings, typed).toContain(typed);
      if (readings.length === 1) expect(readings).toEqual([typed]);
    }
  });

  it('never names a size that no host turns into that very date', () => {
    for (let serial = 10_959; serial <= 60_267; serial += 1) {
      for (const reading of turnedDate(serial)?.readings ?? []) {
        const dates = (['month first', 'day first'] as const).flatMap((order) => [
          hostSerial(reading, order),
          hostSerial(reading, order, 100),
        ]);
        // A fraction alone is a date of the year in which it was typed.
        const anyYear = /^\d+\/(?:[248]|16)$/.test(reading);
        if (!anyYear) expect(dates, `${serial} ${reading}`).toContain(serial);
      }
    }
  });
});
