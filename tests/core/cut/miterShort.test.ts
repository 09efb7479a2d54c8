import { describe, expect, it } from 'vitest';
import { miterShortMm } from '../../../src/core/cut/miterShort.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const degree = Math.PI / 180;
const piece = (longMm: number, widthMm: number, left: number, right: number) => ({
  longMm,
  widthMm,
  miterLeftRad: left * degree,
  miterRightRad: right * degree,
});
const shortMm = (...sizes: Parameters<typeof piece>) => miterShortMm(piece(...sizes));

describe('miterShortMm', () => {
  it.each([
    ['Long', [0, 50, 45, 45]],
    ['Width', [1000, 0, 45, 45]],
    ['Miter left', [1000, 50, 61, 45]],
    ['Miter right', [1000, 50, 45, -61]],
  ] as const)('refuses a bad %s', (argument, [long, width, left, right]) => {
    expect(refusal(() => shortMm(long, width, left, right)).argument).toBe(argument);
  });

  it('refuses miters that leave no piece, with what they take', () => {
    expect(refusal(() => shortMm(99, 50, 45, 45)).problem).toBe(
      'the miters take 100 mm (3-15/16 in) of one edge, and the piece is 99 mm (3.898 in) long.',
    );
    expect(() => shortMm(49, 50, 45, -45)).toThrow('the miters take');
  });

  it('refuses parallel miters that meet along their whole length: nothing is left', () => {
    expect(() => shortMm(50, 50, 45, -45)).toThrow('the miters take');
  });

  it('is 0 where the miters meet in a point', () => {
    expect(shortMm(100, 50, 45, 45)).toBe(0);
  });

  it.each([
    [[1000, 50, 0, 0], 1000],
    [[1000, 50, 45, 0], 950],
    [[1000, 50, 0, 45], 950],
    [[1000, 50, 45, 45], 900],
    [[1000, 50, 45, -45], 950],
    [[1000, 50, 0, -45], 950],
    [[1000, 50, 30, -45], 950],
  ] as const)('of %j is %d', ([long, width, left, right], short) => {
    expect(shortMm(long, width, left, right)).toBeCloseTo(short, 9);
  });

  it.each([45, -45])('shows its working with a right miter of %d°', (right) => {
    expectWorking((working) => miterShortMm(piece(1000, 50, 45, right), working));
  });
});
