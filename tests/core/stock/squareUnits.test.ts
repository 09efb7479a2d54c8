import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StockProblem } from '../../../src/core/stock/stockProblem.js';
import { wholeUnits } from '../../../src/core/stock/wholeUnits.js';
import { squareProblem } from './support.js';

function gcd(one: number, other: number): number {
  return other === 0 ? one : gcd(other, one % other);
}

function problemOf(nm: {
  length: number;
  stock: number;
  kerf: number;
  trim: number;
  grip: number;
}): StockProblem {
  const mm = (value: number) => value / 1e6;
  const base = squareProblem({ [mm(nm.length)]: 1 }, [{ lengthMm: mm(nm.stock) }]);
  return { ...base, kerfMm: mm(nm.kerf), trimMm: mm(nm.trim), gripMm: mm(nm.grip) };
}

const thousandths = fc.integer({ min: 0, max: 20_000 }).map((each) => each * 1000);
const nanometers = fc.record({
  length: fc.integer({ min: 1_000_000, max: 800_000_000 }),
  stock: fc.integer({ min: 1_000_000_000, max: 12_192_000_000 }),
  kerf: thousandths,
  trim: thousandths,
  grip: thousandths,
});

describe('Whole units', () => {
  test('hold as many square pieces in a bar as whole nanometers do', () => {
    fc.assert(
      fc.property(nanometers, (nm) => {
        const { items, stocks } = wholeUnits(problemOf(nm));
        // The last cut may run off the end of a bar that nothing holds.
        const roomNm = nm.stock - nm.trim - nm.grip + (nm.grip > 0 ? 0 : nm.kerf);
        const pieces = Math.floor(roomNm / (nm.length + nm.kerf));
        expect(Math.floor((stocks[0]?.capacity ?? 0) / (items[0]?.size ?? NaN))).toBe(pieces);
      }),
    );
  });

  test('are the coarsest that lose nothing', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 9000 }), { minLength: 1, maxLength: 6 }), (lengths) => {
        const lengthsMm = Object.fromEntries(lengths.map((length) => [String(length / 16), 1]));
        const sizes = wholeUnits(squareProblem(lengthsMm, [{ lengthMm: 6000 }])).items.map(
          ({ size }) => size,
        );
        expect(sizes.reduce(gcd, 0)).toBe(1);
        const [first = 1] = sizes;
        const longest = Math.max(...lengths);
        expect(new Set(sizes)).toEqual(new Set(lengths.map((length) => (length * first) / longest)));
      }),
    );
  });

  test('never let too much into a bar where lengths have no end of digits', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 3000, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (lengthMm, kerfMm) => {
          const stockMm = 12_000 * Math.sqrt(2);
          const problem = { ...squareProblem({ [lengthMm]: 1 }, [{ lengthMm: stockMm }]), kerfMm };
          const { items, stocks } = wholeUnits(problem);
          const pieces = Math.floor((stocks[0]?.capacity ?? 0) / (items[0]?.size ?? NaN));
          // A bar has a slack of 5 nm.
          expect(pieces * (lengthMm + kerfMm) - kerfMm).toBeLessThanOrEqual(stockMm + 5e-6);
          expect((pieces + 1) * (lengthMm + kerfMm + 2e-6) - kerfMm + 2e-6).toBeGreaterThan(stockMm);
        },
      ),
    );
  });

  test('take parts that are cut alike as one, turned or not', () => {
    const rad = 0.3;
    const part = { lengthMm: 500, pieces: 2, leanLeftRad: rad, leanRightRad: 0 };
    const problem: StockProblem = {
      ...squareProblem({}, [{ lengthMm: 2000 }]),
      parts: [part, { ...part, leanLeftRad: 0, leanRightRad: rad }, { ...part, leanLeftRad: -rad }],
      widthMm: 50,
    };
    const kinds = (turning: StockProblem['turning']) =>
      wholeUnits({ ...problem, turning }).items.map(({ demand }) => demand);
    expect(kinds('over and round')).toEqual([6]);
    expect(kinds('round').sort()).toEqual([2, 4]);
    expect(kinds('none')).toEqual([2, 2, 2]);
  });

  test('count prices in their coarsest steps', () => {
    const stocks = [
      { lengthMm: 6000, price: 12.5 },
      { lengthMm: 9000, price: 20 },
    ];
    const { stocks: bars, costStep } = wholeUnits(squareProblem({ 500: 1 }, stocks));
    expect(bars.map(({ cost }) => cost)).toEqual([5, 8]);
    expect(costStep).toBeCloseTo(2.5, 12);
  });

  test('hold the longest bars there are', () => {
    const { items, stocks } = wholeUnits(squareProblem({ 1e7: 1, 0.000001: 1 }, [{ lengthMm: 1e7 }]));
    expect(items.map(({ size }) => size)).toEqual([1e13, 1]);
    // In nanometers, with the slack of five of them.
    expect(stocks[0]?.capacity).toBe(1e13 + 5);
  });
});
