import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearanceRange } from '../../../src/core/part/clearanceRange.js';
import { holePairs } from '../../../src/core/part/holePairs.js';
import type { PlacedHole } from '../../../src/core/part/part.js';
import { holeAt } from '../../support/face.js';
import { anyDirection, anyFreedom, anyHole } from '../../support/randomShape.js';

const visits = (holes: readonly PlacedHole[], reachMm: number) => {
  const found: [number, number, number, number][] = [];
  const count = holePairs(holes, reachMm, (a, b, { least }, repeats) =>
    found.push([a.index, b.index, least.distance, repeats]),
  );
  return { found, ...count };
};

describe('pairs of holes', () => {
  it('are visited within reach, rim to rim, and counted beyond', () => {
    const row = [0, 50, 120].map((x, index) => holeAt(x, 0, { index }));
    expect(visits(row, 50)).toEqual({
      found: [
        [0, 1, 30, 1],
        [1, 2, 50, 1],
      ],
      within: 2,
      pairs: 3,
    });
    expect(visits(row, 49)).toEqual({ found: [[0, 1, 30, 1]], within: 1, pairs: 3 });
  });

  it.each([1, -1])('are visited within reach across too, in either order: %d', (sign) => {
    const column = [holeAt(0, 0), holeAt(5, sign * 50, { index: 1 }), holeAt(10, sign * 110, { index: 2 })];
    const [apart] = visits(column, 45).found;
    expect(apart?.slice(0, 2)).toEqual([0, 1]);
    expect(apart?.[2]).toBeCloseTo(Math.hypot(5, 50) - 20, 9);
    expect(visits([holeAt(0, 0), holeAt(0, sign * 60, { index: 1 })], 40)).toMatchObject({ within: 1 });
    expect(visits([holeAt(0, 0), holeAt(0, sign * 60, { index: 1 })], 39.9)).toMatchObject({ within: 0 });
  });

  it('are pairs of one face only', () => {
    const web = { ...holeAt(0, 0), face: 'web' } as const;
    expect(visits([holeAt(0, 0), web, holeAt(30, 0)], 50)).toMatchObject({ within: 1, pairs: 1 });
  });

  it('stand, where they overlap, for all overlaps of their two groups: the deepest is visited', () => {
    const holes = [0, 15, 25].flatMap((x, index) => [
      holeAt(x, 0, { index, group: 0 }),
      holeAt(x + 200, 0, { index, group: 1 }),
    ]);
    expect(visits(holes, 4).found).toEqual([
      [1, 2, -10, 2],
      [1, 2, -10, 2],
    ]);
    expect(visits(holes, 4)).toMatchObject({ within: 4, pairs: 15 });
  });

  it('give a certain overlap beside a deeper one that may only be', () => {
    const fixed = holeAt(0, 0, { index: 0 });
    const certain = holeAt(15, 0, { index: 1, group: 1 });
    const maybe = holeAt(100, 0, { index: 2, group: 1, free: { x0: -99, x1: 0, y0: 0, y1: 0 } });
    const found: [number, number, number][] = [];
    holePairs([fixed, certain, maybe], 5, (a, b, { least, most }, repeats) => {
      if (a.group !== b.group) found.push([least.distance, most, repeats]);
    });
    expect(found).toEqual([
      [-19, 80, 1],
      [-5, -5, 1],
    ]);
  });

  it('give the certain overlap between others that may only be', () => {
    const fixed = holeAt(0, 0, { index: 0 });
    const maybe = holeAt(100, 0, { index: 1, group: 1, free: { x0: -99, x1: 0, y0: 0, y1: 0 } });
    const certain = holeAt(15, 0, { index: 2, group: 1 });
    const slight = holeAt(18, 0, { index: 3, group: 1, free: { x0: 0, x1: 30, y0: 0, y1: 0 } });
    const found: [number, number, number][] = [];
    holePairs([fixed, maybe, certain, slight], 5, (a, b, { least, most }, repeats) => {
      if (a.group !== b.group) found.push([least.distance, most, repeats]);
    });
    expect(found).toEqual([
      [-19, 80, 2],
      [-5, -5, 1],
    ]);
  });

  it('of overlaps as deep give the one that comes less far apart, in whatever order they are', () => {
    const fixed = holeAt(0, 0);
    const certain = holeAt(15, 0, { index: 1, group: 1 });
    const maybe = holeAt(15, 0, { index: 2, group: 1, free: { x0: 0, x1: 20, y0: 0, y1: 0 } });
    for (const others of [
      [certain, maybe],
      [maybe, certain],
    ]) {
      const found: [number, number, number][] = [];
      holePairs([fixed, ...others], 5, (a, b, { most }, repeats) => {
        if (a.group !== b.group) found.push([b.index, most, repeats]);
      });
      expect(found).toEqual([[1, -5, 2]]);
    }
  });

  it('of holes at one place are the deepest, though others overlap before them', () => {
    const holes = [holeAt(0, 0), holeAt(5, 0, { index: 1, group: 1 }), holeAt(5, 0, { index: 2 })];
    expect(visits(holes, 5).found).toEqual([
      [1, 2, -20, 2],
      [0, 2, -15, 1],
    ]);
  });

  it('that only touch are no overlaps: each is visited', () => {
    const row = [0, 20, 40].map((x, index) => holeAt(x, 0, { index }));
    expect(visits(row, 5).found).toEqual([
      [0, 1, 0, 1],
      [1, 2, 0, 1],
    ]);
  });

  it.each([
    ['long', 100, 80],
    ['short', 40, 20],
  ])('reach to both ends of a %s slot, whichever of them it begins at', (_name, x, y) => {
    const ends = [
      { x, y },
      { x: 30, y: 10 },
    ];
    const beside = [
      holeAt(5, 10, { index: 1 }),
      holeAt(30, -15, { index: 2 }),
      holeAt(x + 25, y, { index: 3 }),
    ];
    for (const core of [ends, [...ends].reverse()]) {
      const slot: PlacedHole = { ...holeAt(65, 45), shape: { core, radius: 10 } };
      const near = visits([...beside, slot], 6).found.filter(([a, b]) => a * b === 0);
      expect(near.map(([a, b]) => a + b).sort()).toEqual([1, 2, 3]);
    }
  });

  it('of many overlaps of two groups are measured up to the first 200, and all counted', () => {
    // Met in the order of x, each a little deeper than the one before.
    const many = Array.from({ length: 250 }, (_, index) =>
      holeAt(index / 10_000, 19 - index / 100, { index, group: 1 }),
    );
    const between: [number, number][] = [];
    const { within } = holePairs([holeAt(0, 0), ...many], 5, (a, b, { least }, repeats) => {
      if (a.group !== b.group) between.push([least.distance, repeats]);
    });
    expect(between).toEqual([[expect.closeTo(Math.hypot(0.0199, 17.01) - 20, 9), 250]]);
    expect(within).toBe((251 * 250) / 2);
  });

  it('are within reach exactly where brute force finds them, and none is left out', () => {
    const anyRow = fc.array(
      fc.record({
        x: fc.integer({ min: 0, max: 300 }),
        y: fc.integer({ min: 0, max: 100 }),
        group: fc.integer({ min: 0, max: 2 }),
      }),
      { maxLength: 14 },
    );
    const anyGroup = fc.record({
      hole: anyHole,
      direction: anyDirection,
      free: fc.option(anyFreedom, { nil: undefined }),
    });
    fc.assert(
      fc.property(
        anyRow,
        fc.tuple(anyGroup, anyGroup, anyGroup),
        fc.integer({ min: 0, max: 60 }),
        (row, groups, reachMm) => {
          const holes = row.map(({ x, y, group }, index) => {
            const { hole, direction, free } = groups[group] ?? groups[0];
            return holeAt(x, y, { hole, direction, group, index, ...(free && { free }) });
          });
          bruteForce(holes, reachMm);
        },
      ),
    );
  });

  it.each([
    ['along', 60, 0],
    ['up', 0, 60],
    ['down', 0, -60],
  ])('of 400 holes in a row (%s) are measured between neighbors only', (_direction, x, y) => {
    const row = Array.from({ length: 400 }, (_, index) => holeAt(index * x, index * y, { index }));
    expect(visits(row, 50)).toMatchObject({ within: 399, pairs: 79_800 });
    expect(measuredOf(row, 50)).toBe(399);
  });

  it.each(['round', 'hexagon'] as const)('of 999 coincident %s holes in 9 groups are 45 visits', (shape) => {
    const hole =
      shape === 'round' ? ({ shape, diameterMm: 20 } as const) : ({ shape, acrossFlatsMm: 20 } as const);
    const holes = Array.from({ length: 999 }, (_, index) =>
      holeAt(50, 70, { hole, index, group: index % 9 }),
    );
    const { found, within, pairs } = visits(holes, 50);
    expect(found).toHaveLength(45);
    expect(found.reduce((sum, [, , , repeats]) => sum + repeats, 0)).toBe(within);
    expect([within, pairs]).toEqual([498_501, 498_501]);
    expect(measuredOf(holes, 50)).toBe(45);
  });

  it('of holes at one place are measured once, though another overlaps them', () => {
    const holes = Array.from({ length: 20 }, (_, index) => holeAt(index === 0 ? 0 : 5, 0, { index }));
    expect(visits(holes, 5)).toMatchObject({ within: 190, found: [[1, 2, -20, 190]] });
    expect(measuredOf(holes, 5)).toBe(19 + 1);
  });

  it('of holes beside or over each other are at no one place', () => {
    for (const [x, y] of [
      [5, 0],
      [0, 5],
    ] as const) {
      const holes = [holeAt(0, 0), holeAt(x, y, { index: 1 }), holeAt(x, y, { index: 2 })];
      expect(visits(holes, 5).found).toEqual([[1, 2, -20, 3]]);
    }
  });
});

/** How many pairs are measured: the core of each hole is read once for its extents, and once for each pair it is in. */
function measuredOf(holes: readonly PlacedHole[], reachMm: number): number {
  let reads = 0;
  const counting = holes.map((hole): PlacedHole => {
    const { core, radius } = hole.shape;
    const shape = {
      radius,
      get core() {
        reads++;
        return core;
      },
    };
    return { ...hole, shape };
  });
  holePairs(counting, reachMm, () => undefined);
  return (reads - holes.length) / 2;
}

function bruteForce(holes: readonly PlacedHole[], reachMm: number): void {
  const visited = new Map<string, number>();
  const { within, pairs } = holePairs(holes, reachMm, (a, b, _range, repeats) =>
    visited.set([a.index, b.index].sort((x, y) => x - y).join(' '), repeats),
  );
  let [near, all] = [0, 0];
  const overlaps = new Map<
    string,
    { least: number; most: number; count: number; visited: number; shownLeast: number; shownMost: number }
  >();
  for (const [at, a] of holes.entries()) {
    for (const b of holes.slice(at + 1)) {
      all++;
      const { least, most } = clearanceRange(a, b);
      if (least.distance > reachMm) continue;
      near++;
      const shown = visited.get(`${a.index} ${b.index}`) ?? 0;
      if (least.distance >= -1e-6) {
        expect(shown).toBe(1);
        continue;
      }
      const key = [a.group, b.group].sort().join(' ');
      const known = overlaps.get(key) ?? {
        least: Infinity,
        most: Infinity,
        count: 0,
        visited: 0,
        shownLeast: Infinity,
        shownMost: Infinity,
      };
      known.count++;
      known.visited += shown;
      known.least = Math.min(known.least, least.distance);
      known.most = Math.min(known.most, most);
      if (shown) known.shownLeast = Math.min(known.shownLeast, least.distance);
      if (shown) known.shownMost = Math.min(known.shownMost, most);
      overlaps.set(key, known);
    }
  }
  expect([within, pairs]).toEqual([near, all]);
  for (const { least, most, count, visited: counted, shownLeast, shownMost } of overlaps.values()) {
    expect(counted).toBe(count);
    expect(shownLeast).toBeCloseTo(least, 5);
    expect(shownMost).toBeCloseTo(most, 5);
  }
}
