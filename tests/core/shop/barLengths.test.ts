import { describe, expect, it } from 'vitest';
import { barLengthMm, readBarLengths } from '../../../src/core/shop/barLengths.js';

const lengths = readBarLengths('L 12 m; FB 6 m; 7 m', 'Bar lengths', 'mm');

describe('what bars come in', () => {
  it.each([
    ['L75x75x8', 12000],
    ['L 3x3x1/4', 12000],
    ['FB 10x50', 6000],
    ['PL10x50', 7000],
    ['Ø20', 7000],
  ])('%s', (section, expected) => {
    expect(barLengthMm(lengths, section, 'mm')).toBe(expected);
  });

  it('is 20 ft or 6 m where nothing is said', () => {
    expect(barLengthMm([], 'L3x3x1/4', 'in')).toBe(6096);
    expect(barLengthMm([], 'L3x3x1/4', 'mm')).toBe(6000);
  });
});
