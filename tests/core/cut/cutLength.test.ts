import { describe, expect, it } from 'vitest';
import { cutLengthMm } from '../../../src/core/cut/cutLength.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const degree = Math.PI / 180;
const cut = (left: number, right: number, kerfMm: number) => ({
  longMm: 1000,
  widthMm: 50,
  miterLeftRad: left * degree,
  miterRightRad: right * degree,
  kerfMm,
});

describe('cutLengthMm', () => {
  it('refuses a piece the miters leave nothing of, and a kerf below 0', () => {
    expect(refusal(() => cutLengthMm({ ...cut(45, 45, 0), longMm: 90 })).argument).toBe('Long');
    expect(refusal(() => cutLengthMm(cut(0, 0, -1))).argument).toBe('Kerf');
  });

  it.each([
    ['a square piece', cut(0, 0, 0), 1000],
    ['a square piece with a slug', cut(0, 0, 10), 1010],
    ['a piece of a frame', cut(45, 45, 0), 1000],
    ['a piece of a frame with a slug', cut(45, 45, 10), 1014.142136],
    ['a brace between parallel rails: its edge', cut(45, -45, 0), 950],
    ['a left miter and a square cut', cut(45, 0, 0), 1000],
    ['a square left end and a miter, on the longer edge', cut(0, 45, 0), 1000],
    ['the same leaning the other way', cut(0, -45, 0), 1000],
  ])('of %s', (_, given, pushedMm) => {
    expect(cutLengthMm(given)).toBeCloseTo(pushedMm, 6);
  });

  it.each([45, 0, -45])('shows its working with a right miter of %d°', (right) => {
    expectWorking((working) => cutLengthMm(cut(45, right, 3), working));
  });
});
