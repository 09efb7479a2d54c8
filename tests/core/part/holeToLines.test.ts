import { describe, expect, it } from 'vitest';
import { bendClearances, type HoleToBend } from '../../../src/core/part/bendClearances.js';
import { heelDistance } from '../../../src/core/part/heelDistance.js';
import type { PlacedHole } from '../../../src/core/part/part.js';
import { holeAt } from '../../support/face.js';

const bend = { face: 'plate', from: { x: 100, y: 0 }, to: { x: 100, y: 100 }, insideRadiusMm: 6 } as const;

function toBend(hole: PlacedHole): HoleToBend[] {
  const found: HoleToBend[] = [];
  bendClearances({ holes: [hole], bends: [bend] }, (_hole, _bend, clearances) => found.push(clearances));
  return found;
}

describe('a hole and a bend line', () => {
  it('are as far apart as the rim and the center are from the line', () => {
    const [{ rim, center } = { rim: undefined, center: undefined }] = toBend(holeAt(130, 50));
    expect([rim?.least.distance, center?.least.distance]).toEqual([20, 30]);
  });

  it('overlap where the line cuts the hole', () => {
    expect(toBend(holeAt(104, 50))[0]?.rim.least.distance).toBe(-6);
  });

  it('are a range where the hole is not placed', () => {
    const rim = toBend(holeAt(130, 50, { free: { x0: -15, x1: 40, y0: 0, y1: 0 } }))[0]?.rim;
    expect([rim?.least.distance, rim?.most]).toEqual([5, 60]);
  });

  it('are measured on one face only', () => {
    expect(toBend({ ...holeAt(130, 50), face: 'web' })).toEqual([]);
  });
});

describe('a hole and the heel', () => {
  it('are as far apart as rim and center are from the line y = 0, wherever the hole may lie', () => {
    const slot = { shape: 'slot', widthMm: 20, lengthMm: 50 } as const;
    expect(heelDistance(holeAt(50, 40, { hole: slot, direction: 'across' }))).toEqual({
      rim: { least: 15, most: 15 },
      center: { least: 40, most: 40 },
    });
    expect(heelDistance(holeAt(50, 40, { free: { x0: 0, x1: 0, y0: -35, y1: 5 } }))).toEqual({
      rim: { least: -5, most: 35 },
      center: { least: 5, most: 45 },
    });
  });
});
