// Random stock problems, and a search of every order and turning as the referee of the miters.
import fc from 'fast-check';
import type { StockProblem, Turning } from '../../../src/core/stock/stockProblem.js';

const degrees = Math.PI / 180;

export function squareProblem(lengths: Record<number, number>, stocks: StockProblem['stocks']): StockProblem {
  return {
    parts: Object.entries(lengths).map(([lengthMm, pieces]) => ({
      lengthMm: Number(lengthMm),
      pieces,
      leanLeftRad: 0,
      leanRightRad: 0,
    })),
    stocks,
    widthMm: 0,
    turning: 'over and round',
    kerfMm: 0,
    trimMm: 0,
    gripMm: 0,
    keepMm: 0,
  };
}

const turnings = fc.constantFrom<Turning>('over and round', 'round', 'none');
const leans = fc.constantFrom(0, 0, 45, -45, 30, -30, 60, 12.5).map((each) => each * degrees);

/** Small problems with every feature on and off; parts are long enough for their miters. */
export function smallProblems({ isMitered }: { isMitered?: boolean } = {}): fc.Arbitrary<StockProblem> {
  const lean = isMitered === false ? fc.constant(0) : leans;
  const part = fc.record({
    lengthMm: fc.integer({ min: 110, max: 700 }),
    pieces: fc.integer({ min: 1, max: 3 }),
    leanLeftRad: lean,
    leanRightRad: lean,
  });
  const base = {
    parts: fc.array(part, { minLength: 1, maxLength: isMitered === false ? 4 : 3 }),
    widthMm: fc.constantFrom(20, 25.4),
    turning: turnings,
    kerfMm: fc.constantFrom(0, 3, 3.175),
    trimMm: fc.constantFrom(0, 10),
    gripMm: fc.constantFrom(0, 40),
    keepMm: fc.constantFrom(0, 200),
  };
  const stock = fc.record({
    lengthMm: fc.integer({ min: 600, max: 1500 }),
    available: fc.option(fc.integer({ min: 0, max: 3 }), { nil: undefined }),
  });
  const stocks = fc.array(stock, { minLength: 1, maxLength: 3 });
  const prices = fc.array(fc.integer({ min: 0, max: 2000 }), { minLength: 3, maxLength: 3 });
  return fc
    .record({ ...base, stocks, prices: fc.option(prices, { nil: undefined }) })
    .map(({ prices: given, ...problem }) => ({
      ...problem,
      parts: problem.parts.map((each) => ({
        ...each,
        pieces: isMitered === false ? each.pieces : Math.min(each.pieces, 2),
      })),
      stocks: problem.stocks.map((each, at) => (given ? { ...each, price: (given[at] ?? 0) / 10 } : each)),
    }));
}
