import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planStock } from '../../../src/core/stock/planStock.js';
import type { StockProblem } from '../../../src/core/stock/stockProblem.js';
import { wholeUnits } from '../../../src/core/stock/wholeUnits.js';

const degree = Math.PI / 180;

interface Pieces {
  lengthMm: number;
  pieces: number;
  barMm: number;
  left?: number;
  right?: number;
  widthMm?: number;
  kerfMm?: number;
}

/** Leans in degrees. */
const problemOf = ({ lengthMm, pieces, barMm, left = 0, right = 0, widthMm = 0, kerfMm = 0 }: Pieces) =>
  ({
    parts: [{ lengthMm, pieces, leanLeftRad: left * degree, leanRightRad: right * degree }],
    stocks: [{ lengthMm: barMm }],
    widthMm,
    turning: 'over and round',
    kerfMm,
    trimMm: 0,
    gripMm: 0,
    keepMm: 1e6,
  }) satisfies StockProblem;

const barsOf = (pieces: Pieces) => planStock(problemOf(pieces)).bars.reduce((sum, { bars }) => sum + bars, 0);

describe('whole units', () => {
  it('are as coarse as the lengths let them be', () => {
    // 1-1/2, 2 and 3 in are 3, 4 and 6 halves.
    const inches = [38.1, 50.8, 76.2].map((lengthMm) => ({
      ...problemOf({ lengthMm, pieces: 1, barMm: 6096 }),
    }));
    const { items, stocks } = wholeUnits({
      ...(inches[0] as StockProblem),
      parts: inches.flatMap(({ parts }) => parts),
    });
    expect(items.map(({ size }) => size)).toEqual([6, 4, 3]);
    expect(stocks[0]?.capacity).toBe(480);
  });

  it('of 45° are exact: 4 pieces of 40 in at 4 in wide fill 148 in', () => {
    const { items, stocks } = wholeUnits(
      problemOf({ lengthMm: 1016, pieces: 4, barMm: 3759.2, left: 45, right: -45, widthMm: 101.6 }),
    );
    // Of 2 in: 36 in along the middle, faces 2 in off, a bar of 148 in.
    expect(items).toMatchObject([{ size: 18, left: 1, right: 1 }]);
    expect(stocks[0]?.capacity).toBe(74);
  });

  it('keep what just fits, however the lengths divide', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 400 }),
        fc.double({ min: 500, max: 20_000, noNaN: true }),
        (n, barMm) => {
          expect(barsOf({ lengthMm: barMm / n, pieces: n, barMm })).toBe(1);
          expect(barsOf({ lengthMm: barMm / n + 1e-4, pieces: n, barMm })).toBe(2);
        },
      ),
    );
  });

  it('keep miters that just fit: n of l take n · l − (n − 1) · b · tan θ where faces lie on each other', () => {
    const cases = fc.record({
      n: fc.integer({ min: 1, max: 40 }),
      angle: fc.double({ min: 1, max: 60, noNaN: true }),
      widthMm: fc.double({ min: 10, max: 150, noNaN: true }),
      lengthMm: fc.double({ min: 700, max: 3000, noNaN: true }),
    });
    fc.assert(
      fc.property(cases, ({ n, angle, widthMm, lengthMm }) => {
        const barMm = n * lengthMm - (n - 1) * widthMm * Math.tan(angle * degree);
        const pieces = { lengthMm, pieces: n, left: angle, right: -angle, widthMm };
        expect(barsOf({ ...pieces, barMm })).toBe(1);
        if (n > 1) expect(barsOf({ ...pieces, barMm: barMm - 1e-4 })).toBe(2);
      }),
    );
  });

  it('keep the last kerf off the end: n of l and n − 1 cuts fill a bar', () => {
    expect(barsOf({ lengthMm: 597, pieces: 10, barMm: 597 * 10 + 9 * 3.1, kerfMm: 3.1 })).toBe(1);
    expect(barsOf({ lengthMm: 597, pieces: 10, barMm: 597 * 10 + 9 * 3.1 - 1e-4, kerfMm: 3.1 })).toBe(2);
  });
});
