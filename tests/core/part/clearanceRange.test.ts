import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearance } from '../../../src/core/part/clearance.js';
import { clearanceRange } from '../../../src/core/part/clearanceRange.js';
import { sweep, translate } from '../../../src/core/part/shape.js';
import { anyFreedom, anyShape, anyShares, placeIn } from '../../support/randomShape.js';

const round = (x: number, y: number, radius: number) => ({ core: [{ x, y }], radius });

describe('the range of a clearance', () => {
  it('is one number for two placed shapes', () => {
    const { least, most } = clearanceRange({ shape: round(0, 0, 5) }, { shape: round(20, 0, 5) });
    expect([least.distance, most]).toEqual([10, 10]);
  });

  it('reaches from the nearest to the farthest place of a hole that may slide', () => {
    const free = { x0: -8, x1: 30, y0: 0, y1: 0 };
    const { least, most } = clearanceRange({ shape: round(0, 0, 5), free }, { shape: round(-20, 0, 5) });
    expect([least.distance, most]).toEqual([2, 40]);
  });

  it('is below 0 at best where no place of a hole is clear of another', () => {
    const free = { x0: -2, x1: 2, y0: 0, y1: 0 };
    expect(clearanceRange({ shape: round(0, 0, 5), free }, { shape: round(0, 0, 5) }).most).toBe(-8);
  });

  it('holds every clearance at any places of two holes that are not placed', () => {
    fc.assert(
      fc.property(
        anyShape,
        anyShape,
        anyFreedom,
        anyFreedom,
        fc.array(fc.tuple(anyShares, anyShares), { minLength: 8 }),
        (a, b, freeA, freeB, shares) => {
          const { least, most } = clearanceRange({ shape: a, free: freeA }, { shape: b, free: freeB });
          for (const [shareA, shareB] of shares) {
            const [toA, toB] = [placeIn(freeA, shareA), placeIn(freeB, shareB)];
            const { distance } = clearance(translate(a, toA.x, toA.y), translate(b, toB.x, toB.y));
            expect(least.distance).toBeLessThanOrEqual(distance + 1e-9);
            expect(most).toBeGreaterThanOrEqual(distance - 1e-9);
          }
        },
      ),
    );
  });

  it('comes as near as the swept shapes, and as far as some corners of the freedom', () => {
    const shares = [0, 1].flatMap((x) => [0, 1].map((y) => ({ x, y })));
    fc.assert(
      fc.property(anyShape, anyShape, anyFreedom, (a, b, free) => {
        const { least, most } = clearanceRange({ shape: a, free }, { shape: b });
        expect(least.distance).toBe(clearance(sweep(a, free), b).distance);
        const atCorners = shares
          .map((share) => placeIn(free, share))
          .map(({ x, y }) => clearance(translate(a, x, y), b).distance);
        expect(Math.max(...atCorners)).toBeCloseTo(most, 9);
      }),
    );
  });

  it('reaches its least at a place where nothing overlaps', () => {
    fc.assert(
      fc.property(anyShape, anyShape, anyFreedom, (a, b, free) => {
        const { least } = clearanceRange({ shape: a, free }, { shape: b });
        fc.pre(least.distance > 0);
        // The clearance is convex in the place: a search by halves along x within one along y finds its least.
        const at = (x: number) => lowest((y) => clearance(translate(a, x, y), b).distance, free.y0, free.y1);
        expect(lowest(at, free.x0, free.x1)).toBeCloseTo(least.distance, 5);
      }),
      { numRuns: 30 },
    );
  });
});

function lowest(value: (place: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < 45; step++) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (value(a) <= value(b)) high = b;
    else low = a;
  }
  return value((low + high) / 2);
}
