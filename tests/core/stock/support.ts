// Stock problems by hand and by chance, also in whole units.
import fc from 'fast-check';
import type { Cutting } from '../../../src/core/stock/cutting.js';
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

interface Units {
  sizes: readonly number[];
  demands?: readonly number[];
  capacities: readonly number[];
  costs?: readonly number[];
  available?: readonly number[];
}

/** Square pieces in whole units, largest first; a bar costs 1 and is to be had without end where nothing else is said. */
export function cuttingOf({ sizes, demands, capacities, costs, available }: Units): Cutting {
  return {
    items: sizes.map((size, part) => {
      const demand = demands?.[part] ?? 1;
      return { size, left: 0, right: 0, demand, parts: [{ part, pieces: demand }] };
    }),
    stocks: capacities.map((capacity, at) => ({
      capacity,
      cost: costs?.[at] ?? 1,
      available: available?.[at] ?? Infinity,
    })),
    placeOf: () => 0,
    isDirected: false,
    isSquare: true,
    costStep: 1,
  };
}

/** Square pieces in whole units by chance. */
export const smallCuttings = fc
  .record({
    pieces: fc.array(fc.tuple(fc.integer({ min: 5, max: 60 }), fc.integer({ min: 1, max: 4 })), {
      minLength: 1,
      maxLength: 5,
    }),
    capacities: fc.array(fc.integer({ min: 60, max: 150 }), { minLength: 1, maxLength: 2 }),
    costs: fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 })),
  })
  .map(({ pieces, capacities, costs }) => {
    const falling = [...new Map(pieces)].sort((a, b) => b[0] - a[0]);
    const [sizes, demands] = [falling.map(([size]) => size), falling.map(([, demand]) => demand)];
    return cuttingOf({ sizes, demands, capacities, costs });
  });

/** Every choice of pieces of a cutting, as counts by item. */
export function everyFill(
  { items }: Pick<Cutting, 'items'>,
  wanted = items.map(({ demand }) => demand),
): number[][] {
  return wanted.reduce<number[][]>(
    (found, count) =>
      found.flatMap((each) => Array.from({ length: count + 1 }, (_, taken) => [...each, taken])),
    [[]],
  );
}

/** The sum of products. */
export function dot(one: readonly number[], other: ArrayLike<number>): number {
  return one.reduce((sum, each, at) => sum + each * (other[at] as number), 0);
}

const turnings = fc.constantFrom<Turning>('over and round', 'round', 'none');
const leans = fc.constantFrom(0, 0, 45, -45, 30, -30, 60, 12.5).map((each) => each * degrees);

/** Prices far apart, next to each other, and none or next to none. */
const prices = fc
  .constantFrom(
    (each: number) => each / 10,
    (each: number) => 1000 + each / 1000,
    (each: number) => each % 3,
  )
  .chain((priceOf) =>
    fc.array(fc.integer({ min: 0, max: 2000 }).map(priceOf), { minLength: 3, maxLength: 3 }),
  );

/** Small problems with every feature on and off; parts are long enough for their miters. */
export function smallProblems({ isMitered }: { isMitered?: boolean } = {}): fc.Arbitrary<StockProblem> {
  const lean = isMitered === false ? fc.constant(0) : leans;
  const part = fc.record({
    lengthMm: fc.integer({ min: 120, max: 700 }),
    pieces: fc.integer({ min: 1, max: isMitered === false ? 4 : 2 }),
    leanLeftRad: lean,
    leanRightRad: lean,
  });
  const stock = fc.record({
    lengthMm: fc.integer({ min: 600, max: 1500 }),
    available: fc.option(fc.integer({ min: 0, max: 3 }), { nil: undefined }),
  });
  const given = fc.record({
    parts: fc.array(part, { minLength: 1, maxLength: isMitered === false ? 4 : 3 }),
    stocks: fc.array(stock, { minLength: 1, maxLength: 3 }),
    widthMm: fc.constantFrom(20, 25.4),
    turning: turnings,
    kerfMm: fc.constantFrom(0, 3, 3.175),
    trimMm: fc.constantFrom(0, 10),
    gripMm: fc.constantFrom(0, 40),
    keepMm: fc.constantFrom(0, 200),
  });
  return fc
    .tuple(given, fc.option(prices, { nil: undefined }), fc.constantFrom(1, 50))
    .map(([problem, priceOf, step]) => ({
      ...problem,
      parts: problem.parts.map((each) => ({
        ...each,
        lengthMm: onGrid(each.lengthMm, step, problem.kerfMm),
      })),
      stocks: problem.stocks.map((each, at) => ({
        ...each,
        lengthMm: onGrid(each.lengthMm, step, 0),
        ...(priceOf && { price: priceOf[at] ?? 0 }),
      })),
    }));
}

/** On a grid with what a cut takes, so that pieces fill bars to the end. */
function onGrid(lengthMm: number, step: number, kerfMm: number): number {
  return step === 1 ? lengthMm : Math.ceil(lengthMm / step) * step - kerfMm;
}
