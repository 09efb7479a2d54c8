import { polygonArea, polygonHull } from 'd3-polygon';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convexHull } from '../../../src/core/part/convexHull.js';
import type { Point } from '../../../src/core/part/point.js';

// Whole numbers, so that many points stand on one line and some are the same.
const place = fc.record({ x: fc.integer({ min: -4, max: 4 }), y: fc.integer({ min: -4, max: 4 }) });
const pair = ({ x, y }: Point): [number, number] => [x, y];

function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

describe('convexHull', () => {
  it('turns left at each of its points and leaves no point outside, for any points', () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 12 }), (points) => {
        const hull = convexHull(points);
        expect(hull.length).toBeGreaterThan(0);
        if (hull.length < 3) return;
        for (const [at, one] of hull.entries()) {
          const next = hull[(at + 1) % hull.length] as Point;
          expect(turn(one, next, hull[(at + 2) % hull.length] as Point)).toBeGreaterThan(0);
          for (const point of points) expect(turn(one, next, point)).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });

  it('has the corners and the area that a general library finds', () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: 3, maxLength: 12 }), (points) => {
        const referee = polygonHull(points.map(pair));
        fc.pre(Math.abs(polygonArea(referee ?? [])) > 0);
        const hull = convexHull(points).map(pair);
        expect(Math.abs(polygonArea(hull))).toBeCloseTo(Math.abs(polygonArea(referee ?? [])), 9);
        for (const corner of hull) expect(referee).toContainEqual(corner);
      }),
    );
  });

  it('of a line is its two ends, of one place that place, of nothing nothing', () => {
    const line = [2, 0, 3, 1, 3, 0].map((at) => ({ x: at, y: 2 * at }));
    expect(convexHull(line)).toEqual([
      { x: 0, y: 0 },
      { x: 3, y: 6 },
    ]);
    const upright = [5, 1, 3].map((y) => ({ x: 7, y }));
    expect(convexHull(upright)).toEqual([
      { x: 7, y: 1 },
      { x: 7, y: 5 },
    ]);
    expect(
      convexHull([
        { x: 1, y: 2 },
        { x: 1, y: 2 },
      ]),
    ).toEqual([{ x: 1, y: 2 }]);
    expect(convexHull([])).toEqual([]);
  });

  it('leaves the points that it is given as they are', () => {
    const points = [
      { x: 3, y: 0 },
      { x: 0, y: 0 },
      { x: 1, y: 5 },
    ];
    const before = structuredClone(points);
    convexHull(points);
    expect(points).toEqual(before);
  });
});
