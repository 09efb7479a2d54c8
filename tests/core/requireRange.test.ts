import { describe, expect, it } from 'vitest';
import { requirePositive, requireWithin } from '../../src/core/requireRange.js';
import { refusalText } from '../support/refusal.js';

describe('requirePositive', () => {
  it('accepts what is above zero, however small', () => {
    expect(() => requirePositive('Width', Number.MIN_VALUE)).not.toThrow();
  });

  it.each([0, -1, Number.NaN, Infinity])('refuses %d', (value) => {
    expect(refusalText(() => requirePositive('Width', value))).toBe(
      `Width: ${value} is not above zero${value === Infinity ? ' and finite' : ''}. Give a number above zero.`,
    );
  });
});

describe('requireWithin', () => {
  it('accepts both ends and refuses past them', () => {
    expect(() => requireWithin('Count', 1, 1, 99)).not.toThrow();
    expect(() => requireWithin('Count', 99, 1, 99)).not.toThrow();
    for (const value of [0.9, 99.1, Number.NaN]) {
      expect(refusalText(() => requireWithin('Count', value, 1, 99))).toBe(
        `Count: ${value} is out of range. Allowed: 1 to 99.`,
      );
    }
  });
});
