import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { legBesidePunch } from '../../../src/core/part/legBesidePunch.js';

describe('legBesidePunch', () => {
  it('has nothing in the way of a single bend', () => {
    expect(legBesidePunch([], 0, 300)).toBeUndefined();
    expect(legBesidePunch([100], 0, 300)).toBeUndefined();
  });

  it('bends the shorter of two legs first', () => {
    const leg = legBesidePunch([50, 150], 0, 300);
    expect(leg).toMatchObject({ bend: 1, madeBefore: 0, webMm: 100, legMm: 50 });
    expect(leg?.gapMm).toBeCloseTo(50 / Math.SQRT2, 9);
    // In whatever order they are given.
    expect(legBesidePunch([150, 50], 0, 300)).toMatchObject({ bend: 0, madeBefore: 1, legMm: 50 });
  });

  it('finds the order of three bends that leaves the most room', () => {
    // First the leg of 20 beside the web of 40, then the other leg of 30 beside the web of 200.
    expect(legBesidePunch([20, 60, 260], 0, 290)?.gapMm).toBeCloseTo(20 / Math.SQRT2, 9);
  });

  it('is below 0 where a leg is longer than the web', () => {
    expect(legBesidePunch([120, 220], 0, 340)?.gapMm).toBeCloseTo(-20 / Math.SQRT2, 9);
  });

  const sizes = fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 3, maxLength: 7 });
  const linesOf = (spaces: readonly number[]) => {
    let sum = 0;
    const places = spaces.map((space) => (sum += space));
    return { places: places.slice(0, -1), endMm: sum };
  };

  it('is the same wherever the plate begins', () => {
    fc.assert(
      fc.property(sizes, fc.integer({ min: -500, max: 500 }), (spaces, startMm) => {
        const { places, endMm } = linesOf(spaces);
        const moved = places.map((atMm) => atMm + startMm);
        expect(legBesidePunch(moved, startMm, endMm + startMm)).toEqual(legBesidePunch(places, 0, endMm));
      }),
    );
  });

  it('is the same seen from the other end', () => {
    fc.assert(
      fc.property(sizes, (spaces) => {
        const [own, other] = [spaces, [...spaces].reverse()].map((each) => {
          const { places, endMm } = linesOf(each);
          return legBesidePunch(places, 0, endMm)?.gapMm ?? Infinity;
        });
        expect(own).toBeCloseTo(other ?? NaN, 9);
      }),
    );
  });

  it('is found for 60 bends too, though their orders cannot be counted', () => {
    const places = Array.from({ length: 60 }, (_, at) => 100 * (at + 1));
    // Of the two in the middle one is made after the other, with 3000 of plate beyond that and a web of 100 between.
    expect(legBesidePunch(places, 0, 6100)?.gapMm).toBeCloseTo((100 - 3000) / Math.SQRT2, 9);
  });

  it('is the best of all orders, tried one by one', () => {
    fc.assert(
      fc.property(sizes, (spaces) => {
        const { places, endMm } = linesOf(spaces);
        const best = Math.max(
          ...ordersOf(places.map((_, at) => at)).map((order) => gapOf(order, places, endMm)),
        );
        expect(legBesidePunch(places, 0, endMm)?.gapMm ?? Infinity).toBeCloseTo(best, 9);
      }),
      { numRuns: 60 },
    );
  });

  it('is never better where a leg is longer', () => {
    fc.assert(
      fc.property(sizes, fc.integer({ min: 1, max: 100 }), (spaces, more) => {
        const { places, endMm } = linesOf(spaces);
        const gap = (end: number) => legBesidePunch(places, 0, end)?.gapMm ?? Infinity;
        expect(gap(endMm + more)).toBeLessThanOrEqual(gap(endMm) + 1e-9);
      }),
    );
  });
});

function ordersOf(items: readonly number[]): number[][] {
  if (items.length === 0) return [[]];
  return items.flatMap((item) =>
    ordersOf(items.filter((each) => each !== item)).map((rest) => [item, ...rest]),
  );
}

/** The least gap as the bends are made one after another. */
function gapOf(order: readonly number[], places: readonly number[], endMm: number): number {
  let least = Infinity;
  for (const [step, at] of order.entries()) {
    const made = order.slice(0, step);
    const low = Math.max(...made.filter((each) => each < at));
    const high = Math.min(...made.filter((each) => each > at));
    const place = (index: number) => places[index] ?? NaN;
    if (Number.isFinite(low)) least = Math.min(least, place(at) - 2 * place(low));
    if (Number.isFinite(high)) least = Math.min(least, 2 * place(high) - place(at) - endMm);
  }
  return least / Math.SQRT2;
}
