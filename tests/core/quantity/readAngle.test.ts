import { describe, expect, it } from 'vitest';
import { readAngle } from '../../../src/core/quantity/readAngle.js';
import { refusal } from '../../support/refusal.js';

describe('readAngle', () => {
  it.each([null, '', true, 'steep', '45 rad', Number.NaN])('refuses %j', (value) => {
    expect(refusal(() => readAngle(value, 'Miter', 0, 60)).code).toBe('invalid');
  });

  it('accepts its limits and nothing outside', () => {
    expect(readAngle(0, 'Miter', 0, 60)).toBe(0);
    expect(readAngle(60, 'Miter', 0, 60)).toBeCloseTo(Math.PI / 3, 12);
    for (const value of [-0.1, 60.1, '61°']) {
      expect(refusal(() => readAngle(value, 'Miter', 0, 60)).problem).toContain('out of range');
    }
  });

  it.each([45, '45', '45°', '45 °', '45 deg', '45 degrees', '45.0'])('reads %j', (value) => {
    expect(readAngle(value, 'Miter', 0, 60)).toBeCloseTo(Math.PI / 4, 12);
  });
});
