import { describe, expect, it } from 'vitest';
import { miterKerfMm } from '../../../src/core/cut/miterKerf.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const degree = Math.PI / 180;

describe('miterKerfMm', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a kerf of %d', (kerfMm) => {
    expect(refusal(() => miterKerfMm({ kerfMm, miterRad: 0 })).argument).toBe('Kerf');
  });

  it.each([60.01, -60.01, 90, Number.NaN])('refuses a miter of %d°', (miter) => {
    const failure = refusal(() => miterKerfMm({ kerfMm: 3, miterRad: miter * degree }));
    expect(failure.argument).toBe('Miter');
    expect(failure.allowed).toBe('Give up to 60° from square.');
  });

  it.each([
    [0, 3],
    [45, 4.242641],
    [-45, 4.242641],
    [60, 6],
  ])('of 3 mm at %d° is %d mm', (miter, alongMm) => {
    expect(miterKerfMm({ kerfMm: 3, miterRad: miter * degree })).toBeCloseTo(alongMm, 6);
  });

  it('shows its working', () => {
    expectWorking((working) => miterKerfMm({ kerfMm: 3, miterRad: 45 * degree }, working));
  });
});
