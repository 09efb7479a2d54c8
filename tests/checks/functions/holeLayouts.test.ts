import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { add, complex, type Complex, multiply, nthRoots } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { shopWith } from '../../support/sampleShop.js';
import { expectPrinted } from '../../support/printed.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const shop = shopWith();
const sheet = new SheetRuntime(shop);
const places = (name: string, ...inputs: (string | number | null)[]) =>
  sheet.call(name, ...inputs) as [number, number][];
const points = (name: string, ...inputs: (string | number | null)[]) =>
  places(name, ...inputs).map(([x, y]) => new Flatten.Point(x, y));
const { Point, Segment } = Flatten;

/** The four edges of a plate, as a geometry library has them: left, right, bottom, top. */
function edgesOf(length: number, width: number): Flatten.Segment[] {
  const [a, b] = [new Point(0, 0), new Point(length, 0)];
  const [c, d] = [new Point(length, width), new Point(0, width)];
  return [new Segment(a, d), new Segment(b, c), new Segment(a, b), new Segment(d, c)];
}

/** The nearest hole to each edge, measured by the geometry library. */
const nearest = (holes: readonly Flatten.Point[], length: number, width: number) =>
  edgesOf(length, width).map((edge) => Math.min(...holes.map((hole) => hole.distanceTo(edge)[0])));

const expectNear = (values: readonly number[], others: readonly number[]) => {
  expect(values).toHaveLength(others.length);
  values.forEach((value, at) => expect(value).toBeCloseTo(others[at] ?? NaN, 9));
};

describe('HOLESCORNER', () => {
  it('2 in from the ends and 2 in from the sides: an everyday base plate (common practice, no source)', () => {
    expect(places('HOLESCORNER', 12, 12, 2)).toEqual([
      [2, 2],
      [10, 2],
      [2, 10],
      [10, 10],
    ]);
  });

  it('a geometry library measures the distances asked for, to every edge', () => {
    const holes = points('HOLESCORNER', 300, 220, 45, 'mm', 35);
    expect(holes).toHaveLength(4);
    expectNear(nearest(holes, 300, 220), [45, 45, 35, 35]);
    for (const hole of holes) {
      const [left = 0, right = 0, bottom = 0, top = 0] = nearest([hole], 300, 220);
      expectNear([Math.min(left, right), Math.min(bottom, top)], [45, 35]);
    }
  });
});

describe('HOLESROW', () => {
  it('fasteners at most 12 in apart, AISC 360-16 J3.5 (from memory), by hand: 57 in takes 5 spaces of 11.4 in', () => {
    const row = places('HOLESROW', 60, '1-1/2', 2, 'in', 12, 3);
    expectNear(
      row.map(([x]) => x),
      [1.5, 12.9, 24.3, 35.7, 47.1, 58.5],
    );
    expect(row.every(([, y]) => y === 3)).toBe(true);
  });

  it('a geometry library measures equal spaces, and the distance asked for at both ends', () => {
    const size = fc.integer({ min: 100, max: 6000 });
    fc.assert(
      fc.property(
        size,
        fc.integer({ min: 10, max: 40 }),
        fc.integer({ min: 2, max: 40 }),
        (length, end, count) => {
          const holes = points('HOLESROW', length, end, count, 'mm', null, 50);
          expect(holes).toHaveLength(count);
          expectNear(nearest(holes, length, 100).slice(0, 2), [end, end]);
          const spaces = holes.slice(1).map((hole, at) => hole.distanceTo(holes[at] as Flatten.Point)[0]);
          expectNear(spaces, Array(count - 1).fill((length - 2 * end) / (count - 1)));
        },
      ),
      { numRuns: 200, seed: 7 },
    );
  });
});

describe('HOLESGRID', () => {
  it('a splice plate by hand: 6 columns 3 in apart, 2 rows 5-1/2 in apart', () => {
    const grid = places('HOLESGRID', 18, 9, 6, 2, '1-1/2', '1-3/4');
    expect(grid.map(([x]) => x)).toEqual([1.5, 4.5, 7.5, 10.5, 13.5, 16.5, 1.5, 4.5, 7.5, 10.5, 13.5, 16.5]);
    expect(grid.map(([, y]) => y)).toEqual([...Array<number>(6).fill(1.75), ...Array<number>(6).fill(7.25)]);
  });

  it('is the same after a half turn about the middle, as a geometry library turns it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 12 }), fc.integer({ min: 2, max: 12 }), (columns, rows) => {
        const holes = points('HOLESGRID', 640, 410, columns, rows, 30, 25, 'mm');
        expect(holes).toHaveLength(columns * rows);
        expectNear(nearest(holes, 640, 410), [30, 30, 25, 25]);
        const turned = holes.map((hole) => hole.rotate(Math.PI, new Point(320, 205)));
        for (const hole of turned) {
          expect(Math.min(...holes.map((other) => other.distanceTo(hole)[0]))).toBeLessThan(1e-9);
        }
      }),
      { numRuns: 30, seed: 7 },
    );
  });
});

describe('HOLESCIRCLE', () => {
  it('are the roots of unity, as a mathematics library takes them, turned and stretched', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 48 }),
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: 50, max: 900 }),
        (count, start, diameter) => {
          const circle = places('HOLESCIRCLE', diameter, count, 'mm', start, 500, 480);
          const first = complex({ r: 1, phi: (start * Math.PI) / 180 });
          const center = complex(500, 480);
          const roots = nthRoots(complex(1, 0), count) as unknown as Complex[];
          expect(circle).toHaveLength(count);
          // The library gives the roots in the order of their angle, from 1.
          roots.forEach((root, at) => {
            const { re, im } = add(center, multiply(diameter / 2, multiply(first, root))) as Complex;
            expectNear(
              circle[at] ?? [],
              [re, im].map((mm) => Number(mm)),
            );
          });
        },
      ),
      { numRuns: 200, seed: 7 },
    );
  });

  // Machinery's Handbook, lengths of chords for a circle of diameter 1 (from memory).
  it.each([
    [3, '0.86603'],
    [4, '0.70711'],
    [5, '0.58779'],
    [6, '0.50000'],
    [8, '0.38268'],
    [10, '0.30902'],
    [12, '0.25882'],
    [16, '0.19509'],
  ])('%d holes on a circle of diameter 1: chord %s', (count, chord) => {
    const [first, second] = points('HOLESCIRCLE', 1000, count, 'mm', 11);
    expectPrinted((first as Flatten.Point).distanceTo(second as Flatten.Point)[0] / 1000, chord);
  });

  it('ASME B16.5, NPS 4 class 150: 8 holes on 7.5 in straddle the center lines (from memory)', () => {
    const ring = places('HOLESCIRCLE', 7.5, 8, 'in', 22.5, 4.5, 4.5);
    expect(ring.some(([x, y]) => Math.abs(x - 4.5) < 1 || Math.abs(y - 4.5) < 1)).toBe(false);
    for (const [x, y] of ring) expect(Math.hypot(x - 4.5, y - 4.5)).toBeCloseTo(3.75, 9);
  });
});

describe('ROWHOLES', () => {
  const rowHoles = (part: Record<string, string | number>) =>
    (sheet.call('ROWHOLES', [Object.keys(part)], [Object.values(part)], shop.stamp) as unknown[][]).slice(1);

  it('a gusset by hand: two lines of three, 3 in apart along and 5-1/2 in across', () => {
    const gusset = {
      Section: 'PL3/8X9',
      Length: 10,
      Hole: '6 @ 13/16',
      End: '1-1/2',
      Edge: '1-3/4',
      Pitch: 3,
      Gage: '5-1/2',
    };
    expect(rowHoles(gusset).map(([, , x, y, , known]) => [x, y, known])).toEqual([
      [1.5, 1.75, 'given'],
      [4.5, 1.75, 'given'],
      [7.5, 1.75, 'given'],
      [1.5, 7.25, 'given'],
      [4.5, 7.25, 'given'],
      [7.5, 7.25, 'given'],
    ]);
  });

  it('an angle without a gage is read on its usual one: 1-3/4 in for a leg of 3 in, AISC Manual Table 1-7A (from memory)', () => {
    const clip = { Section: 'L3X3X1/4', Length: 9, Hole: '2 @ 13/16', End: '1-1/2', Pitch: 6 };
    expect(rowHoles(clip).map(([, , x, y, , known]) => [x, y, known])).toEqual([
      [1.5, 1.75, 'read'],
      [7.5, 1.75, 'read'],
    ]);
  });
});
