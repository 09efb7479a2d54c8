import { describe, expect, it } from 'vitest';
import { forceReading, readForce } from '../../../src/core/quantity/readForce.js';
import { refusal } from '../../support/refusal.js';

describe('readForce: arguments', () => {
  it.each(['65 ton', '65 tons', '65 t'])('refuses %j, which is three different units', (value) => {
    expect(refusal(() => readForce(value, 'Punch force')).problem).toContain('is three different units');
  });

  it.each([65, '65'])('refuses %j without a unit', (value) => {
    expect(refusal(() => readForce(value, 'Punch force')).problem).toContain('has no unit');
  });

  it.each([null, '', true, 'strong', 'kN 65', Number.NaN])('refuses %j', (value) => {
    expect(refusal(() => readForce(value, 'Punch force', 'kN')).code).toBe('invalid');
  });

  it('refuses a unit that is none of force', () => {
    expect(refusal(() => readForce('65 kg', 'Punch force')).problem).toBe('"kg" is not a unit of force.');
  });
});

describe('readForce: limits', () => {
  it('accepts up to 50,000 kN and nothing above or at zero', () => {
    expect(readForce('50000 kN', 'Force')).toBe(50e6);
    expect(refusal(() => readForce('50001 kN', 'Force')).problem).toContain('out of range');
    expect(refusal(() => readForce('0 kN', 'Force')).problem).toContain('out of range');
    expect(refusal(() => readForce(-5, 'Force', 'kN')).problem).toContain('out of range');
  });
});

describe('readForce: values', () => {
  it.each([
    ['100 kN', null, 100_000],
    [100, 'kN', 100_000],
    ['1 US ton', null, 8896.443],
    ['1 U.S. ton', null, 8896.443],
    [1, 'us tons', 8896.443],
    ['1 tonne', null, 9806.65],
    [1, 'metric ton', 9806.65],
  ])('reads %j with the unit %j', (value, unit, forceN) => {
    expect(readForce(value, 'Force', unit)).toBeCloseTo(forceN, 3);
  });

  it('takes the unit in the text before the one beside it', () => {
    expect(readForce('1 kN', 'Force', 'US ton')).toBe(1000);
  });

  it.each(['130 t', '130t', '130 to', '130 tf'])('reads %s as tonnes in a shop in mm', (text) => {
    expect(readForce(text, 'Force', null, 'mm')).toBeCloseTo(130 * 9806.65, 6);
    expect(refusal(() => readForce(text, 'Force', null, 'in')).code).toBe('invalid');
  });

  it('refuses a point that may part thousands, but in US tons', () => {
    expect(refusal(() => readForce('1.500 kN', 'Force'))).toMatchObject({
      problem: "'1.500 kN' may be 1.5 kN or 1500 kN.",
      allowed: 'Write 1.5 kN or 1500 kN.',
    });
    expect(readForce('1.500 US ton', 'Force')).toBeCloseTo(1.5 * 8896.443, 2);
    expect(readForce('1 500 kN', 'Force')).toBe(1_500_000);
  });
});

describe('what a force is read as', () => {
  it.each([
    ['130 t', null],
    ['130', 't'],
    [130, 'T'],
    ['130 to', 'kN'],
  ])('%j beside the unit %j is told in full', (value, unit) => {
    // 130 · 9.80665 = 1274.9
    expect(forceReading(value, unit, 'mm')).toBe('130 tonne (1000 kgf), 1275 kN');
  });

  it('is not told where the unit is plain, or nothing is read', () => {
    for (const value of ['130 tonne', '1275 kN', '65 US ton', '130', 't', '', 'abc t'])
      expect(forceReading(value, null, 'mm')).toBeUndefined();
    expect(forceReading('130 t', null, 'in')).toBeUndefined();
  });
});
