import { describe, expect, it } from 'vitest';
import { readStress } from '../../../src/core/quantity/readStress.js';
import { refusal } from '../../support/refusal.js';

describe('readStress', () => {
  it.each([null, '', true, 'strong', '310 stone', Number.NaN])('refuses %j', (value) => {
    expect(refusal(() => readStress(value, 'Shear', 'mm')).code).toBe('invalid');
  });

  it('accepts 20 to 3000 MPa and nothing outside', () => {
    expect([readStress(20, 'Shear', 'mm'), readStress(3000, 'Shear', 'mm')]).toEqual([20, 3000]);
    for (const value of [19.9, 3000.1]) {
      expect(refusal(() => readStress(value, 'Shear', 'mm')).problem).toContain('out of range');
    }
  });

  it.each([
    [310, 'mm', 310],
    ['310', 'mm', 310],
    ['310 N/mm²', 'in', 310],
    [45, 'in', 310.264],
    ['45 ksi', 'mm', 310.264],
    ['45000 psi', 'mm', 310.264],
  ] as const)('reads %j in a shop of %s as %d MPa', (value, unit, stressMPa) => {
    expect(readStress(value, 'Shear', unit)).toBeCloseTo(stressMPa, 3);
  });
});
