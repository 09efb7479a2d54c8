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

  it.each([
    ['22-1/2', 22.5],
    ['22 1/2°', 22.5],
    ['22½', 22.5],
    ["22°30'", 22.5],
    ["22 deg 30'", 22.5],
    ['5:12', (Math.atan(5 / 12) * 180) / Math.PI],
    ['3-7/16 : 12', (Math.atan(3.4375 / 12) * 180) / Math.PI],
    ['12:12', 45],
  ])('reads %s as %d degrees', (text, degrees) => {
    expect(readAngle(text, 'Miter', 0, 60)).toBeCloseTo((degrees * Math.PI) / 180, 12);
  });

  it.each(['1/2', '221/2', '5/12', '13:12', "22°70'", '22-1/3', '5:13'])('refuses %s', (text) => {
    expect(refusal(() => readAngle(text, 'Miter', 0, 60)).received).toBe(text);
  });

  it('knows a bevel that became a time of day', () => {
    expect(refusal(() => readAngle(312 / 1440, 'Miter', 0, 60))).toMatchObject({
      problem: '0.21666666666666667 looks like the bevel 5:12 that the spreadsheet turned into a time.',
      allowed: 'Format the cell as text and type 5:12 again.',
    });
    expect(readAngle(0.5, 'Miter', 0, 60)).toBeCloseTo(0.0087, 3);
  });
});
