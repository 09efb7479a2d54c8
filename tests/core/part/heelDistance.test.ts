import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heelDistance } from '../../../src/core/part/heelDistance.js';
import { holeShape } from '../../../src/core/part/holeShape.js';
import type { PlacedHole } from '../../../src/core/part/part.js';

const hole = (y: number, free?: PlacedHole['free']): PlacedHole => {
  const center = { x: 100, y };
  const shape = holeShape({ shape: 'round', diameterMm: 20 }, center, 'along');
  return { face: 'leg A', group: 1, index: 0, center, shape, ...(free && { free }) };
};

describe('heelDistance', () => {
  it('of a placed hole is its gage, and what is left beside its rim', () => {
    expect(heelDistance(hole(35))).toEqual({ rim: { least: 25, most: 25 }, center: { least: 35, most: 35 } });
    expect(heelDistance(hole(4)).rim).toEqual({ least: -6, most: -6 });
  });

  it('of a slot across the leg counts from its end, of a square from its side', () => {
    const center = { x: 100, y: 50 };
    const slot = holeShape({ shape: 'slot', widthMm: 20, lengthMm: 60 }, center, 'across');
    const square = holeShape({ shape: 'square', sideMm: 30 }, center, 'along');
    expect(heelDistance({ ...hole(50), shape: slot })).toEqual({
      rim: { least: 20, most: 20 },
      center: { least: 50, most: 50 },
    });
    expect(heelDistance({ ...hole(50), shape: square }).rim.least).toBeCloseTo(35, 9);
  });

  it('of a hole that is not placed reaches as far as the hole may lie, wherever along the leg', () => {
    const size = fc.double({ min: 0, max: 30, noNaN: true });
    fc.assert(
      fc.property(size, size, size, (down, up, along) => {
        const found = heelDistance(hole(60, { x0: -along, x1: along, y0: -down, y1: up }));
        expect(found.center.least).toBeCloseTo(60 - down, 9);
        expect(found.center.most).toBeCloseTo(60 + up, 9);
        expect(found.rim.least).toBeCloseTo(50 - down, 9);
        expect(found.rim.most).toBeCloseTo(50 + up, 9);
      }),
    );
  });
});
