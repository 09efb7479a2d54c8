import { describe, expect, it } from 'vitest';
import { holeShape } from '../../../src/core/part/holeShape.js';

const center = { x: 100, y: 50 };
const extents = (core: readonly { x: number; y: number }[]) => [
  Math.max(...core.map(({ x }) => x)) - Math.min(...core.map(({ x }) => x)),
  Math.max(...core.map(({ y }) => y)) - Math.min(...core.map(({ y }) => y)),
];

describe('the shape of a hole', () => {
  it('is a point with the radius of a round hole', () => {
    expect(holeShape({ shape: 'round', diameterMm: 22 }, center, 'along')).toEqual({
      core: [center],
      radius: 11,
    });
  });

  it('is a segment between the centers of the end radii of a slot, in its direction', () => {
    const slot = { shape: 'slot', widthMm: 20, lengthMm: 50 } as const;
    expect(holeShape(slot, center, 'along')).toEqual({
      core: [
        { x: 85, y: 50 },
        { x: 115, y: 50 },
      ],
      radius: 10,
    });
    expect(holeShape(slot, center, 'across')).toEqual({
      core: [
        { x: 100, y: 35 },
        { x: 100, y: 65 },
      ],
      radius: 10,
    });
  });

  it('is round for a slot that is not longer than wide', () => {
    expect(holeShape({ shape: 'slot', widthMm: 20, lengthMm: 20 }, center, 'along')).toEqual({
      core: [center],
      radius: 10,
    });
  });

  it('is a rectangle with its length in its direction', () => {
    const rectangle = { shape: 'rectangle', widthMm: 20, lengthMm: 50 } as const;
    expect(extents(holeShape(rectangle, center, 'along').core)).toEqual([50, 20]);
    expect(extents(holeShape(rectangle, center, 'across').core)).toEqual([20, 50]);
  });

  it('is a hexagon with two flats along the length, or across it', () => {
    const hexagon = { shape: 'hexagon', acrossFlatsMm: 30 } as const;
    const [along, across] = [holeShape(hexagon, center, 'along'), holeShape(hexagon, center, 'across')];
    expect(extents(along.core)[1]).toBeCloseTo(30, 12);
    expect(extents(along.core)[0]).toBeCloseTo(60 / Math.sqrt(3), 12);
    expect(extents(across.core)[0]).toBeCloseTo(30, 12);
  });

  it.each(['square', 'rectangle', 'hexagon'] as const)('runs counter-clockwise around a %s', (shape) => {
    const hole = {
      square: { shape: 'square', sideMm: 20 },
      rectangle: { shape: 'rectangle', widthMm: 10, lengthMm: 30 },
      hexagon: { shape: 'hexagon', acrossFlatsMm: 20 },
    } as const;
    for (const direction of ['along', 'across'] as const) {
      const { core } = holeShape(hole[shape], center, direction);
      for (const [at, a] of core.entries()) {
        const [b, c] = [core[(at + 1) % core.length] ?? a, core[(at + 2) % core.length] ?? a];
        expect((b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x)).toBeGreaterThan(0);
      }
    }
  });
});
