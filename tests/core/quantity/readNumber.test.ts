import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digitsValue, readNumber } from '../../../src/core/quantity/readNumber.js';
import { refusal } from '../../support/refusal.js';

describe('digitsValue', () => {
  it.each([
    ['12', 12],
    ['1.5', 1.5],
    ['.5', 0.5],
    ['1,5', 1.5],
    ['0,500', 0.5],
    ['1234,567', 1234.567],
    ['1,234.5', 1234.5],
    ['1,234,567', 1_234_567],
    ['1.234.567', 1_234_567],
    ['1.234,5', 1234.5],
  ])('reads %s', (run, value) => {
    expect(digitsValue(run)).toBe(value);
  });

  it.each(['1,500', '12,000', '999,999'])('calls %s ambiguous', (run) => {
    expect(digitsValue(run)).toBe('ambiguous');
  });

  it.each(['', '.', ',', '1..2', '1,2,3', '1,23.4', '12,3456,7', '1.2.3', 'a', '-1'])(
    'does not read %j',
    (run) => {
      expect(digitsValue(run)).toBeUndefined();
    },
  );

  it('reads what JavaScript writes', () => {
    fc.assert(
      fc.property(fc.nat({ max: 1_000_000_000 }), (thousandths) => {
        expect(digitsValue(String(thousandths / 1000))).toBe(thousandths / 1000);
      }),
    );
  });
});

describe('readNumber', () => {
  it.each([
    [0.75, 0.75],
    ['0.75', 0.75],
    [' 12 ', 12],
    ['-3', -3],
    ['−3', -3],
    [-3, -3],
  ])('reads %j', (value, number) => {
    expect(readNumber(value, 'Ratio')).toBe(number);
  });

  it.each([null, '', 'abc', true, Number.NaN, Infinity, '1e3', '--1', '1 2'])('refuses %j', (value) => {
    expect(refusal(() => readNumber(value, 'Ratio')).problem).toContain('is not a number');
  });

  // Known defect: 400 digits are read as Infinity. `it.fails` turns red once they are refused.
  it('refuses digits too long to be a number', () => {
    expect(refusal(() => readNumber('9'.repeat(400), 'Ratio')).problem).toContain('is not a number');
  });

  it('refuses a number with two readings with both of them', () => {
    expect(refusal(() => readNumber('1,500', 'Price'))).toMatchObject({
      problem: "'1,500' may be 1.5 or 1500.",
      allowed: 'Write 1.5 or 1500.',
    });
  });
});
