// Cores of whole numbers, so that sides are parallel, corners meet and cores touch, against a geometry library where they
// are apart and a search by directions where they are not.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convexHull } from '../../../src/core/part/convexHull.js';
import { coreGap } from '../../../src/core/part/coreGap.js';
import type { Point } from '../../../src/core/part/point.js';
import { libraryDistance } from '../../checks/part/libraryReferee.js';
import { signedDistance } from '../../checks/part/signedDistance.js';

const pair = ({ x, y }: Point): [number, number] => [x, y];
const core = (...corners: [number, number][]) => corners.map(([x, y]) => ({ x, y }));
const whole = fc.integer({ min: -6, max: 6 });
const anyPlace = fc.record({ x: whole, y: whole });
/** A point, a segment or a convex polygon, counter-clockwise. */
const anyCore = fc.array(anyPlace, { minLength: 1, maxLength: 6 }).map(convexHull);
/** The same beside it, as often apart from it as not. */
const anyCoreBeside = fc
  .tuple(anyCore, anyPlace)
  .map(([corners, by]) => corners.map(({ x, y }) => ({ x: x + 2 * by.x, y: y + 2 * by.y })));
const square = core([0, 0], [10, 0], [10, 10], [0, 10]);

describe('the gap of two cores', () => {
  it('is what the referees say, in a direction from the first to the second', () => {
    fc.assert(
      fc.property(anyCore, anyCoreBeside, (a, b) => {
        const gap = coreGap(a, b);
        const [one, other] = [a.map(pair), b.map(pair)];
        const apart = libraryDistance(one, other);
        expect(gap.distance).toBeCloseTo(apart > 0 ? apart : signedDistance(one, other), 6);
        expect(Math.hypot(gap.nx, gap.ny)).toBeCloseTo(1, 9);
        expect(gap.b.x - gap.a.x).toBeCloseTo(gap.nx * gap.distance, 6);
        expect(gap.b.y - gap.a.y).toBeCloseTo(gap.ny * gap.distance, 6);
        expect(libraryDistance([pair(gap.a)], one)).toBeCloseTo(0, 6);
        expect(libraryDistance([pair(gap.b)], other)).toBeCloseTo(0, 6);
      }),
    );
  });

  it('is that of the one which shows it, where the sides of the other only touch', () => {
    const beside = core([10, 15], [15, 5]);
    expect(coreGap(square, beside).distance).toBeCloseTo(5 / Math.sqrt(5), 12);
    expect(coreGap(beside, square).distance).toBeCloseTo(5 / Math.sqrt(5), 12);
  });

  it.each([0, 5e-7, -5e-7])('has the direction of the side that is %d mm off', (off) => {
    const point = core([10 + off, 5]);
    const [there, back] = [coreGap(square, point), coreGap(point, square)];
    expect([there.nx, there.ny + 0]).toEqual([1, 0]);
    expect([back.nx, back.ny + 0]).toEqual([-1, 0]);
    expect(back.distance).toBeCloseTo(off, 12);
  });

  it('of a segment without length is that of its point, whatever it lies in', () => {
    for (const at of [
      [4, 5],
      [13, 14],
      [10, 5],
    ] as [number, number][]) {
      expect(coreGap(square, core(at, at)).distance).toBeCloseTo(coreGap(square, core(at)).distance, 12);
      expect(coreGap(core(at, at), square).distance).toBeCloseTo(coreGap(square, core(at)).distance, 12);
    }
  });

  it('of two points at one place is 0, with a direction', () => {
    const { distance, nx, ny, a, b } = coreGap(core([3, 4]), core([3, 4]));
    expect([distance, Math.hypot(nx, ny)]).toEqual([0, 1]);
    expect([a, b]).toEqual(core([3, 4], [3, 4]));
  });
});
