import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearance } from '../../../src/core/part/clearance.js';
import { type Shape, translate } from '../../../src/core/part/shape.js';
import { toleranceMm } from '../../../src/core/part/tolerance.js';
import { anyShape } from '../../support/randomShape.js';

const shape = (radius: number, ...core: [number, number][]): Shape => ({
  core: core.map(([x, y]) => ({ x, y })),
  radius,
});
const square = shape(0, [0, 0], [10, 0], [10, 10], [0, 10]);

describe('the clearance of two shapes', () => {
  it.each<[string, Shape, Shape, number]>([
    ['two round holes apart', shape(5, [0, 0]), shape(10, [30, 0]), 15],
    ['two round holes that touch', shape(5, [0, 0]), shape(10, [15, 0]), 0],
    ['two round holes through each other', shape(5, [0, 0]), shape(10, [9, 0]), -6],
    ['two round holes at one place', shape(5, [3, 3]), shape(10, [3, 3]), -15],
    [
      'crossing segments: the least move slides one off the other',
      shape(0, [-10, 0], [10, 0]),
      shape(0, [0, -1], [0, 10]),
      -1,
    ],
    ['crossing slots', shape(2, [-10, 0], [10, 0]), shape(3, [0, -1], [0, 10]), -6],
    ['segments in one line, apart', shape(0, [0, 0], [10, 0]), shape(0, [13, 0], [20, 0]), 3],
    ['segments in one line, one over the other', shape(0, [0, 0], [10, 0]), shape(0, [5, 0], [20, 0]), 0],
    ['slots in one line, one over the other', shape(4, [0, 0], [10, 0]), shape(4, [5, 0], [20, 0]), -8],
    ['corner to corner', square, shape(0, [13, 14], [20, 14], [20, 20], [13, 20]), 5],
    ['a square in another', square, shape(0, [2, 4], [4, 4], [4, 6], [2, 6]), -4],
    ['a point on a side', square, shape(0, [10, 5]), 0],
    ['a round hole whose center is in a square', square, shape(2, [9, 5]), -3],
  ])('%s', (_name, a, b, expected) => {
    expect(clearance(a, b).distance).toBeCloseTo(expected, 12);
    expect(clearance(b, a).distance).toBeCloseTo(expected, 12);
  });

  it('is the same from either side, and wherever both lie', () => {
    fc.assert(
      fc.property(anyShape, anyShape, fc.integer({ min: -500, max: 500 }), (a, b, by) => {
        const { distance } = clearance(a, b);
        expect(Math.abs(clearance(b, a).distance - distance)).toBeLessThan(toleranceMm);
        expect(
          Math.abs(clearance(translate(a, by, -by), translate(b, by, -by)).distance - distance),
        ).toBeLessThan(toleranceMm);
      }),
    );
  });

  it('is measured between two places as far apart as it says, one on each boundary', () => {
    fc.assert(
      fc.property(anyShape, anyShape, (a, b) => {
        const { distance, at } = clearance(a, b);
        expect(Math.abs(Math.hypot(at[1].x - at[0].x, at[1].y - at[0].y) - Math.abs(distance))).toBeLessThan(
          toleranceMm,
        );
        expect(Math.abs(clearance(a, { core: [at[0]], radius: 0 }).distance)).toBeLessThan(toleranceMm);
        expect(Math.abs(clearance(b, { core: [at[1]], radius: 0 }).distance)).toBeLessThan(toleranceMm);
      }),
    );
  });

  it('is 0 after the least move that parts an overlap, and no shorter move parts it', () => {
    const turns = Array.from({ length: 24 }, (_, at) => (at * Math.PI) / 12);
    fc.assert(
      fc.property(anyShape, anyShape, (a, b) => {
        const { distance, at } = clearance(a, b);
        fc.pre(distance < -1e-3);
        const [x, y] = [at[0].x - at[1].x, at[0].y - at[1].y];
        expect(Math.abs(clearance(a, translate(b, x, y)).distance)).toBeLessThan(toleranceMm);
        for (const turn of turns) {
          const shorter = 0.99 * -distance;
          const moved = translate(b, shorter * Math.cos(turn), shorter * Math.sin(turn));
          expect(clearance(a, moved).distance).toBeLessThan(0);
        }
      }),
    );
  });
});
