import { describe, expect, it } from 'vitest';
import { cornerClipForceN } from '../../src/core/force/cornerClip.js';
import { notchBites } from '../../src/core/force/notchBites.js';
import { leastHoleToBendMm } from '../../src/core/rule/holeToBend.js';

describe('Corner clip a × b: a cut of √(a² + b²) (plane geometry), all of it at once (common practice, no source)', () => {
  it.each([
    [30, 40, 50],
    [50, 120, 130],
    [25.4, 25.4, 35.92],
  ])('%d × %d: %d mm', (alongMm, acrossMm, cutMm) => {
    const forceN = cornerClipForceN({ alongMm, acrossMm, thicknessMm: 10, shearStrengthMPa: 345 });
    expect(forceN / (10 * 345)).toBeCloseTo(cutMm, 2);
  });
});

describe('Hole edge to bend at least 2 t + R (common practice, no source)', () => {
  it.each([
    [6, 9, 21],
    [10, 15, 35],
  ])('%d mm thick, radius %d: %d mm', (thicknessMm, insideRadiusMm, leastMm) => {
    expect(leastHoleToBendMm({ thicknessMm, insideRadiusMm })).toBe(leastMm);
  });
});

describe('Bites at least as wide as the material is thick and as half the tool (common practice, no source)', () => {
  // A tool of 60 × 60 mm; bites counted and measured by hand.
  it.each([
    [60, 60, 1, 60, 60],
    [61, 60, 2, 30.5, 60],
    [150, 40, 3, 50, 40],
    [100, 100, 4, 50, 50],
  ])('a notch %d × %d: %d bites of %d × %d', (widthMm, depthMm, count, biteWidthMm, biteDepthMm) => {
    const tool = { toolWidthMm: 60, toolDepthMm: 60, thicknessMm: 10, shearStrengthMPa: 345 };
    const bites = notchBites({ widthMm, depthMm, where: 'edge', ...tool });
    expect(bites).toMatchObject({ count, biteWidthMm, biteDepthMm });
    expect(bites.forceN).toBeCloseTo((2 * biteDepthMm + biteWidthMm) * 10 * 345, 6);
  });
});
