import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearance } from '../../../src/core/part/clearance.js';
import { cornersOf, sweep, translate } from '../../../src/core/part/shape.js';
import { anyFreedom, anyShape, anyShares, placeIn } from '../../support/randomShape.js';

describe('a swept shape', () => {
  it('of a point is the box, of a slot the hexagon or rectangle around both', () => {
    const free = { x0: -10, x1: 10, y0: 0, y1: 5 };
    const corners = [
      { x: -10, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 5 },
      { x: -10, y: 5 },
    ];
    expect(sweep({ core: [{ x: 0, y: 0 }], radius: 3 }, free)).toEqual({ core: corners, radius: 3 });
    const slot = {
      core: [
        { x: 0, y: -20 },
        { x: 0, y: 20 },
      ],
      radius: 3,
    };
    expect(sweep(slot, free).core).toEqual([
      { x: -10, y: -20 },
      { x: 10, y: -20 },
      { x: 10, y: 25 },
      { x: -10, y: 25 },
    ]);
  });

  it('of a point that slides is a segment, and of one that does not the point', () => {
    const point = { core: [{ x: 1, y: 2 }], radius: 3 };
    expect(sweep(point, { x0: -1, x1: 4, y0: 0, y1: 0 }).core).toEqual([
      { x: 0, y: 2 },
      { x: 5, y: 2 },
    ]);
    expect(sweep(point, { x0: 0, x1: 0, y0: -1, y1: 4 }).core).toEqual([
      { x: 1, y: 1 },
      { x: 1, y: 6 },
    ]);
    expect(sweep(point, { x0: 2, x1: 2, y0: -1, y1: -1 }).core).toEqual([{ x: 3, y: 1 }]);
  });

  it('is convex, counter-clockwise, and covers the shape at every place', () => {
    fc.assert(
      fc.property(anyShape, anyFreedom, anyShares, (shape, free, share) => {
        const { core, radius } = sweep(shape, free);
        for (const [at, a] of core.entries()) {
          const [b, c] = [core[(at + 1) % core.length] ?? a, core[(at + 2) % core.length] ?? a];
          const turn = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
          if (core.length > 2) expect(turn).toBeGreaterThan(-1e-9);
        }
        const { x, y } = placeIn(free, share);
        for (const corner of translate(shape, x, y).core) {
          expect(clearance({ core, radius: 0 }, { core: [corner], radius: 0 }).distance).toBeLessThan(1e-9);
        }
        expect(radius).toBe(shape.radius);
      }),
    );
  });

  it('has its corners at those of the shape in the corners of the box', () => {
    fc.assert(
      fc.property(anyShape, anyFreedom, (shape, free) => {
        const all = cornersOf(free).flatMap(({ x, y }) => translate(shape, x, y).core);
        for (const corner of sweep(shape, free).core) expect(all).toContainEqual(corner);
      }),
    );
  });
});
