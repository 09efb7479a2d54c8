import { describe, expect, it } from 'vitest';
import { readMass } from '../../../src/core/quantity/readMass.js';
import { refusal } from '../../support/refusal.js';

describe('readMass', () => {
  it.each([null, '', true, 'heavy', '5 stone', Number.NaN])('refuses %j', (value) => {
    expect(refusal(() => readMass(value, 'Heaviest bar', 'mm')).code).toBe('invalid');
  });

  it('accepts up to 100,000 kg and nothing above or at zero', () => {
    expect(readMass(100_000, 'Heaviest bar', 'mm')).toBe(100_000);
    for (const value of [100_001, 0, -1]) {
      expect(refusal(() => readMass(value, 'Heaviest bar', 'mm')).problem).toContain('out of range');
    }
  });

  it.each([
    [230, 'mm', 230],
    [512, 'in', 232.239],
    ['512 lbs', 'mm', 232.239],
    ['230 kg', 'in', 230],
  ] as const)('reads %j in a shop of %s as %d kg', (value, unit, massKg) => {
    expect(readMass(value, 'Heaviest bar', unit)).toBeCloseTo(massKg, 3);
  });
});
