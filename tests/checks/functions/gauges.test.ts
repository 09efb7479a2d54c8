import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const sheet = new SheetRuntime();
type Place = [number, number];
const [length, width] = [400, 240];

/** Turns about the middle of the plate, as a geometry library makes them. */
const middle = new Flatten.Point(length / 2, width / 2);
const toMiddle = new Flatten.Matrix().translate(middle.x, middle.y);
const mirrored = (x: number, y: number) =>
  toMiddle
    .multiply(new Flatten.Matrix().scale(x, y))
    .multiply(new Flatten.Matrix().translate(-middle.x, -middle.y));
const turned: Record<string, (point: Flatten.Point) => Flatten.Point> = {
  'as it lies': (point) => point,
  'turned end for end': (point) => point.rotate(Math.PI, middle),
  'flipped side for side': (point) => point.transform(mirrored(1, -1)),
  'flipped end for end': (point) => point.transform(mirrored(-1, 1)),
};
const group: Record<string, string[]> = {
  none: ['as it lies'],
  half: ['as it lies', 'turned end for end'],
  flip: Object.keys(turned),
};

const hole = fc.tuple(fc.integer({ min: 1, max: 39 }), fc.integer({ min: 1, max: 23 }));
const holesOf = fc
  .uniqueArray(hole, { minLength: 1, maxLength: 24, selector: ([x, y]) => `${x} ${y}` })
  .map((all) => all.map(([x, y]): Place => [10 * x, 10 * y]));
const allowed = fc.constantFrom('none', 'half', 'flip');

/** A pattern with every place that the turns bring its holes to. */
function closed(holes: readonly Place[], turns: string): Place[] {
  const all = holes.flatMap(([x, y]) =>
    (group[turns] ?? []).map((way): Place => {
      const point = turned[way]?.(new Flatten.Point(x, y)) ?? middle;
      return [Math.round(point.x), Math.round(point.y)];
    }),
  );
  return [...new Map(all.map((place) => [place.join(' '), place])).values()];
}

describe('GAUGECOUNT', () => {
  // Four corner holes of a rectangle (common practice, no source).
  it.each([
    ['none', 4],
    ['half', 2],
    ['flip', 1],
  ])('a base plate with a hole in each corner, %s: %d', (turns, count) => {
    const corners = sheet.call('HOLESCORNER', 12, 10, 2) as Place[];
    expect(sheet.number('GAUGECOUNT', corners, 12, 10, 'in', turns)).toBe(count);
  });

  it('is the number of orbits by the lemma of Burnside, for patterns that the turns bring onto themselves', () => {
    fc.assert(
      fc.property(holesOf, allowed, (some, turns) => {
        const holes = closed(some, turns);
        const ways = group[turns] ?? [];
        const fixed = ways.map((way) =>
          holes.filter(([x, y]) => {
            const point = new Flatten.Point(x, y);
            return (turned[way]?.(point) ?? middle).distanceTo(point)[0] < 1e-6;
          }),
        );
        const orbits = fixed.reduce((sum, { length: count }) => sum + count, 0) / ways.length;
        expect(sheet.number('GAUGECOUNT', holes, length, width, 'mm', turns)).toBe(orbits);
      }),
      { numRuns: 300, seed: 7 },
    );
  });

  it('a ring of eight holes off the center lines by hand: 8, 4 and 2', () => {
    const ring = sheet.call('HOLESCIRCLE', 7.5, 8, 'in', 22.5, 4.5, 4.5) as Place[];
    const counts = ['none', 'half', 'flip'].map((turns) =>
      sheet.number('GAUGECOUNT', ring, 9, 9, 'in', turns),
    );
    expect(counts).toEqual([8, 4, 2]);
  });
});

describe('GAUGESETTINGS', () => {
  it('bring every hole to its stop and fence, as a geometry library turns the plate', () => {
    fc.assert(
      fc.property(holesOf, allowed, (holes, turns) => {
        const rows = sheet.call('GAUGESETTINGS', holes, length, width, 'mm', turns) as (string | number)[][];
        const made: number[] = [];
        for (const [, stop, fence, hits, ways, side] of rows.slice(1)) {
          const before = made.length;
          for (const way of String(ways).split('; ')) {
            const [turn = '', rowsOfIt = ''] = way.split(', row');
            for (const [row] of rowsOfIt.matchAll(/\d+/g)) {
              const [x, y] = holes[Number(row) - 1] ?? [NaN, NaN];
              const point = turned[turn]?.(new Flatten.Point(x, y)) ?? middle;
              expect(point.x).toBeCloseTo(Number(stop), 6);
              expect(point.y).toBeCloseTo(Number(fence), 6);
              made.push(Number(row));
            }
          }
          expect(side).toBe('left');
          expect(made.length - before).toBe(hits);
        }
        expect(made.sort((a, b) => a - b)).toEqual(holes.map((_, at) => at + 1));
        expect(rows.length - 1).toBe(sheet.number('GAUGECOUNT', holes, length, width, 'mm', turns));
      }),
      { numRuns: 200, seed: 7 },
    );
  });
});
