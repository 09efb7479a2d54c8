import { describe, expect, it } from 'vitest';
import { flatBarShearForceN } from '../../src/core/force/flatBarShear.js';
import { sectionShearForceN } from '../../src/core/force/sectionShear.js';
import { expectPrinted } from '../support/printed.js';

const degree = Math.PI / 180;

/**
 * Referee: the force along the blade summed strip by strip. At x along the bar the blade still has
 * t − x · tan φ of steel to go through; where nothing is left, the strip adds nothing.
 */
function summedForceN(
  widthMm: number,
  thicknessMm: number,
  shearStrengthMPa: number,
  rakeRad: number,
): number {
  const strips = 200_000;
  const stripMm = widthMm / strips;
  let forceN = 0;
  for (let strip = 0; strip < strips; strip += 1) {
    const left = thicknessMm - (strip + 0.5) * stripMm * Math.tan(rakeRad);
    forceN += shearStrengthMPa * Math.max(0, left) * stripMm;
  }
  return forceN;
}

describe('Flat-bar shearing force against the sum of strips τ · (t − x · tan φ)', () => {
  const cases = [0, 0.5, 2, 4, 8, 15].flatMap((rake) =>
    [
      [50, 10],
      [150, 12.7],
      [300, 6],
      [30, 25],
      [100, 7],
    ].map(([width = 0, thickness = 0]) => [width, thickness, rake] as const),
  );
  it.each(cases)('%d × %d mm at %d°', (widthMm, thicknessMm, rake) => {
    const rakeRad = rake * degree;
    const forceN = flatBarShearForceN({ widthMm, thicknessMm, shearStrengthMPa: 345, rakeRad });
    expect(forceN / summedForceN(widthMm, thicknessMm, 345, rakeRad)).toBeCloseTo(1, 6);
  });
});

describe('Flat-bar shearing force of a stronger steel', () => {
  it('at the force of 50 × 10 at 4°, 1.275 times the strength: 8.22 mm, not the 8.86 mm of a square root (worked by hand)', () => {
    const blade = { widthMm: 50, rakeRad: 4 * degree };
    const forceN = flatBarShearForceN({ ...blade, thicknessMm: 10, shearStrengthMPa: 345 });
    const stronger = (thicknessMm: number) =>
      flatBarShearForceN({ ...blade, thicknessMm, shearStrengthMPa: 345 * 1.275 });
    expect(stronger(8.215)).toBeLessThan(forceN);
    expect(stronger(8.225)).toBeGreaterThan(forceN);
    expectPrinted(10 / Math.sqrt(1.275), '8.86');
  });
});

describe('Section shearing force', () => {
  it('a hand calculation: Ø1 in at 50 ksi is 0.7854 · 50 = 39.27 kip, 174.68 kN; √2 times that at 45°', () => {
    const round = { areaMm2: (Math.PI * 25.4 ** 2) / 4, shearStrengthMPa: 344.738 };
    expectPrinted(sectionShearForceN({ ...round, miterRad: 0 }) / 1000, '174.68');
    expectPrinted(sectionShearForceN({ ...round, miterRad: 45 * degree }) / 1000, '247.04');
  });
});
