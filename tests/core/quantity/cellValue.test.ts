import { describe, expect, it } from 'vitest';
import { isBlank, meant, plainText, quoted } from '../../../src/core/quantity/cellValue.js';

describe('isBlank', () => {
  it.each([null, undefined, '', ' ', '\t\n'])('is true for %j', (value) => expect(isBlank(value)).toBe(true));
  it.each([0, false, 'a', ' a '])('is false for %j', (value) => expect(isBlank(value)).toBe(false));
});

describe('meant', () => {
  it.each([null, undefined, '', ' ', 0, -0])('takes %j as a blank cell', (value) =>
    expect(meant(value)).toBeNull(),
  );
  it.each(['0', 'a', 1e-9, false, true])('keeps %j', (value) => expect(meant(value)).toBe(value));
});

describe('quoted', () => {
  it.each([
    [null, 'a blank cell'],
    [true, 'TRUE'],
    [false, 'FALSE'],
    [12.5, '12.5'],
    ['3/8', "'3/8'"],
    ['a\u0000b\nc', "'a b c'"],
  ])('quotes %j as %s', (value, text) => expect(quoted(value)).toBe(text));

  it('shortens text over 40 characters', () => {
    expect(quoted('x'.repeat(40))).toBe(`'${'x'.repeat(40)}'`);
    expect(quoted('x'.repeat(41))).toBe(`'${'x'.repeat(40)}…'`);
  });
});

describe('plainText', () => {
  it('keeps text on one line and within 500 characters', () => {
    expect(plainText(' a\r\n\u2028b ')).toBe('a b');
    expect(plainText('y'.repeat(501))).toHaveLength(500);
  });
});
