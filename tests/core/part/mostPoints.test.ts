import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mostPoints } from '../../../src/core/part/mostPoints.js';
import { toleranceMm } from '../../../src/core/part/tolerance.js';

const sideMm = fc.double({ min: 0, max: 500, noNaN: true });
const leastMm = fc.double({ min: 5, max: 100, noNaN: true });

describe('the most points with a least distance in a rectangle', () => {
  it.each([
    [300, 0, 75, 5],
    [299.9, 0, 75, 4],
    [0, 0, 75, 1],
    [74, 0, 75, 1],
    [0, 150, 75, 3],
  ])('are exact on a line: %d × %d, %d apart: %d', (lengthMm, heightMm, apartMm, expected) => {
    expect(mostPoints(lengthMm, heightMm, apartMm)).toBe(expected);
  });

  it('are none where a side is below 0, and without end where nothing keeps them apart', () => {
    expect(mostPoints(-1, 10, 5)).toBe(0);
    expect(mostPoints(10, -1, 5)).toBe(0);
    expect(mostPoints(10, 10, 0)).toBe(Infinity);
    expect(mostPoints(0, 0, toleranceMm)).toBe(Infinity);
  });

  it('are one at a place that is below 0 by less than the tolerance', () => {
    expect(mostPoints(-toleranceMm / 2, 0, 75)).toBe(1);
    expect(mostPoints(0, -toleranceMm / 2, 75)).toBe(1);
    expect(mostPoints(-2 * toleranceMm, 0, 75)).toBe(0);
  });

  it('are never fewer than a square grid has', () => {
    fc.assert(
      fc.property(sideMm, sideMm, leastMm, (a, b, p) => {
        const grid = (Math.floor(a / p) + 1) * (Math.floor(b / p) + 1);
        expect(mostPoints(a, b, p)).toBeGreaterThanOrEqual(grid);
      }),
    );
  });

  it('are never fewer than staggered rows have', () => {
    fc.assert(
      fc.property(sideMm, sideMm, leastMm, (a, b, p) => {
        expect(mostPoints(a, b, p)).toBeGreaterThanOrEqual(staggered(a, b, p));
        expect(mostPoints(a, b, p)).toBeGreaterThanOrEqual(staggered(b, a, p));
      }),
    );
  });

  it('are few more than staggered rows have in a wide field', () => {
    expect(mostPoints(1000, 1000, 10) / staggered(1000, 1000, 10)).toBeLessThan(1.02);
  });

  it('are never fewer than brute force places on a small grid', () => {
    for (const [columns, rows] of [
      [4, 4],
      [5, 3],
      [7, 2],
      [6, 1],
    ] as const) {
      for (const apart of [1, Math.SQRT2, 2, Math.sqrt(5), 3]) {
        expect(mostPoints(columns - 1, rows - 1, apart)).toBeGreaterThanOrEqual(
          bruteForce(columns, rows, apart),
        );
      }
    }
  });
});

/** Rows at p·√3/2, every other shifted by half the distance. */
function staggered(a: number, b: number, p: number): number {
  let count = 0;
  for (let row = 0; (row * p * Math.sqrt(3)) / 2 <= b; row++) {
    const room = row % 2 ? a - p / 2 : a;
    if (room >= 0) count += Math.floor(room / p) + 1;
  }
  return count;
}

/** The most whole places of a grid that keep the distance, by trying all of them. */
function bruteForce(columns: number, rows: number, apart: number): number {
  const places = Array.from(
    { length: columns * rows },
    (_, at) => [at % columns, Math.floor(at / columns)] as const,
  );
  const most = (from: number, chosen: (readonly [number, number])[]): number => {
    let best = chosen.length;
    for (let at = from; at < places.length; at++) {
      const place = places[at] ?? [0, 0];
      const keeps = chosen.every(([x, y]) => Math.hypot(x - place[0], y - place[1]) >= apart - 1e-9);
      if (keeps) best = Math.max(best, most(at + 1, [...chosen, place]));
    }
    return best;
  };
  return most(0, []);
}
