// What must hold for every problem, whatever its plan: plans of the same problem changed in one way are compared.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planStock } from '../../../src/core/stock/planStock.js';
import type { StockPlan } from '../../../src/core/stock/stockPlan.js';
import type { StockProblem } from '../../../src/core/stock/stockProblem.js';
import { verifyPlan } from '../../../src/core/stock/verifyPlan.js';
import { loadSolver } from '../../../src/planner/highs.js';
import { smallProblems } from './support.js';

const solver = await loadSolver();
const numRuns = 40;

/** Infinity where something finds no bar. */
function purchaseOf(problem: StockProblem): number {
  const plan = planStock(problem, { solver });
  if (plan.shortages.length > 0) return Infinity;
  // Problems as small as these are proven without exception.
  expect(plan.proof).toBeDefined();
  return plan.purchase;
}

const priced = (problem: StockProblem): StockProblem => ({
  ...problem,
  stocks: problem.stocks.map((stock) => ({ ...stock, price: stock.price ?? stock.lengthMm })),
});

type Change = (problem: StockProblem, by: number) => StockProblem;

const neverDearer: Record<string, Change> = {
  'more bars to be had': (problem, by) => ({
    ...problem,
    stocks: problem.stocks.map((stock) => ({ ...stock, available: stock.available && stock.available + by })),
  }),
  'longer bars at the same price': (problem, by) => ({
    ...problem,
    stocks: problem.stocks.map((stock) => ({ ...stock, lengthMm: stock.lengthMm + 10 * by })),
  }),
  'one more length to choose from': (problem, by) => ({
    ...problem,
    stocks: [...problem.stocks, { lengthMm: 700 + 50 * by, price: 300 }],
  }),
};
const neverCheaper: Record<string, Change> = {
  'a wider kerf': (problem, by) => ({ ...problem, kerfMm: problem.kerfMm + by }),
  'a longer trim': (problem, by) => ({ ...problem, trimMm: problem.trimMm + 10 * by }),
  'a longer grip': (problem, by) => ({ ...problem, gripMm: problem.gripMm + 10 * by }),
};
const theSame: Record<string, Change> = {
  'a line of parts split in two': (problem) => ({
    ...problem,
    parts: problem.parts.flatMap((part) =>
      part.pieces === 1
        ? [part]
        : [
            { ...part, pieces: 1 },
            { ...part, pieces: part.pieces - 1 },
          ],
    ),
  }),
  'parts in another order': (problem) => ({ ...problem, parts: [...problem.parts].reverse() }),
  'stock lengths in another order': (problem) => ({ ...problem, stocks: [...problem.stocks].reverse() }),
};

const by = fc.integer({ min: 1, max: 6 });

for (const [name, change] of Object.entries(neverDearer))
  test(`with ${name}, a plan never costs more`, () => {
    fc.assert(
      fc.property(smallProblems().map(priced), by, (problem, much) => {
        const before = purchaseOf(problem);
        expect(purchaseOf(change(problem, much))).toBeLessThanOrEqual(before + 1e-6);
      }),
      { numRuns },
    );
  });

for (const [name, change] of Object.entries(neverCheaper))
  test(`with ${name}, a plan never costs less`, () => {
    fc.assert(
      fc.property(smallProblems(), by, (problem, much) => {
        expect(purchaseOf(change(problem, much))).toBeGreaterThanOrEqual(purchaseOf(problem) - 1e-6);
      }),
      { numRuns },
    );
  });

for (const [name, change] of Object.entries(theSame))
  test(`with ${name}, a plan costs the same`, () => {
    fc.assert(
      fc.property(smallProblems(), by, (problem, much) => {
        const [one, other] = [purchaseOf(problem), purchaseOf(change(problem, much))];
        expect(other === one || Math.abs(other - one) < 1e-6).toBe(true);
      }),
      { numRuns },
    );
  });

test('twice as long, everything is bought twice as long', () => {
  fc.assert(
    fc.property(smallProblems({ isMitered: false }), (problem) => {
      const { parts, stocks, kerfMm, trimMm, gripMm, keepMm } = problem;
      const twice = <T extends { lengthMm: number }>(each: T): T => ({
        ...each,
        lengthMm: 2 * each.lengthMm,
      });
      const doubled = { ...problem, parts: parts.map(twice), stocks: stocks.map(twice) };
      const losses = { kerfMm: 2 * kerfMm, trimMm: 2 * trimMm, gripMm: 2 * gripMm, keepMm: 2 * keepMm };
      const factor = stocks.some(({ price }) => price === undefined) ? 2 : 1;
      const [one, other] = [purchaseOf(problem), purchaseOf({ ...doubled, ...losses })];
      expect(other === factor * one || Math.abs(other - factor * one) < 1e-6).toBe(true);
    }),
    { numRuns },
  );
});

test('the same problem twice gives the same plan, byte for byte, also with another load of the solver', async () => {
  const again = await loadSolver();
  fc.assert(
    fc.property(smallProblems(), (problem) => {
      const [one, other] = [planStock(problem, { solver }), planStock(problem, { solver: again })];
      expect(JSON.stringify(other)).toBe(JSON.stringify(one));
    }),
    { numRuns },
  );
});

test('plans only get better on the way, each is right, and no bound is above the last purchase', () => {
  const shortMm = ({ parts }: StockProblem, { shortages }: StockPlan) =>
    shortages.reduce((sum, { part, pieces }) => sum + pieces * (parts[part]?.lengthMm ?? NaN), 0);
  let told = 0;
  fc.assert(
    fc.property(smallProblems({ isMitered: false }), (problem) => {
      const seen: StockPlan[] = [];
      const last = planStock(problem, { solver, onBest: (plan) => seen.push(plan) });
      told += seen.length;
      seen.forEach((plan, at) => {
        verifyPlan(problem, plan);
        if (last.shortages.length === 0) expect(plan.bound).toBeLessThanOrEqual(last.purchase + 1e-6);
        const before = seen[at - 1];
        if (!before) return;
        // Lengths that find no bar count with a cut.
        const less = shortMm(problem, before) - shortMm(problem, plan);
        expect(less).toBeGreaterThanOrEqual(-4 * problem.kerfMm - 1e-6);
        if (Math.abs(less) < 1e-6) expect(plan.purchase).toBeLessThanOrEqual(before.purchase + 1e-6);
      });
      expect(last.purchase).toBe(seen.at(-1)?.purchase);
    }),
    { numRuns: 100 },
  );
  expect(told).toBeGreaterThan(100);
});
