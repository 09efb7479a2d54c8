import { describe, expect, it } from 'vitest';
import { cornerClipForceN } from '../../src/core/force/cornerClip.js';
import { notchBites } from '../../src/core/force/notchBites.js';
import { leastHoleToBendMm } from '../../src/core/rule/holeToBend.js';
import { leastPieceMm } from '../../src/core/rule/leastPiece.js';
import { leastStripWidthMm } from '../../src/core/rule/leastStrip.js';
import { bodyFits } from '../../src/core/tooling/bodyFits.js';
import { dieSuits } from '../../src/core/tooling/dieSuits.js';

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

describe('A notcher of fixed width, in an edge (common practice, no source)', () => {
  // A tool of 60 mm: its first bite is 60 wide, the last takes what is left, at least 30.
  const tool = { toolWidthMm: 60, toolDepthMm: 60, narrowestMm: 60, thicknessMm: 10, shearStrengthMPa: 345 };

  it.each([
    [60, 1],
    [90, 2],
    [120, 2],
    [150, 3],
  ])('a notch %d wide: %d bites', (widthMm, count) => {
    const bites = notchBites({ widthMm, depthMm: 40, where: 'edge', ...tool });
    expect(bites).toMatchObject({ count, biteWidthMm: 60 });
  });

  it('no notch 61 to 89 wide', () => {
    for (let widthMm = 61; widthMm < 90; widthMm++) {
      expect(() => notchBites({ widthMm, depthMm: 40, where: 'edge', ...tool })).toThrow('sideways');
    }
  });
});

describe('Strips under eight times their thickness twist and bow (common practice, no source)', () => {
  it('10 mm thick: 80 mm wide', () => {
    expect(leastStripWidthMm({ thicknessMm: 10 })).toBe(80);
  });
});

describe('Shortest piece a shear cuts: twice the thickness, at least 25 mm (common practice, no source)', () => {
  it.each([
    [10, 25],
    [20, 40],
  ])('%d mm: %d mm', (thicknessMm, leastMm) => {
    expect(leastPieceMm({ thicknessMm })).toBe(leastMm);
  });
});

describe('Tools that go together (common practice, no source)', () => {
  it('a die of 26.2 × 152.4 mm does not serve a punch of 25.4 × 50.8 mm, one of 26.2 × 51.6 mm does', () => {
    const punch = { shape: 'rectangle', widthMm: 25.4, lengthMm: 50.8 } as const;
    const serves = (lengthMm: number) =>
      dieSuits({ die: { shape: 'rectangle', widthMm: 26.2, lengthMm }, punch, clearanceMm: 0.8 });
    expect([serves(152.4), serves(51.6)]).toEqual([false, true]);
  });

  it('a square of 20 mm has a diagonal of 28.28 mm, which a body of 28 mm does not hold (plane geometry)', () => {
    const square = { shape: 'square', sideMm: 20 } as const;
    expect(bodyFits({ punch: square, bodyMm: 28, stationMm: 50 }).fits).toBe('no');
    expect(bodyFits({ punch: square, bodyMm: 28.29, stationMm: 50 }).fits).toBe('yes');
  });
});
