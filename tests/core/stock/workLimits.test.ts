// Where the search ends is counted, whatever the size of the problem.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LinearSolver } from '../../../src/core/stock/linearSolver.js';
import { planStock } from '../../../src/core/stock/planStock.js';
import type { StockProblem } from '../../../src/core/stock/stockProblem.js';
import { verifyPlan } from '../../../src/core/stock/verifyPlan.js';
import { iterationWork, wholeIterationWork } from '../../../src/core/stock/work.js';
import { loadSolver } from '../../../src/planner/highs.js';
import { squareProblem } from './support.js';

const base = await loadSolver();

/** The solver, with what it was asked to do. */
function countingSolver(): { solver: LinearSolver; spent: { parts: number; wholes: number } } {
  const spent = { parts: 0, wholes: 0 };
  return {
    spent,
    solver: {
      open(rows) {
        const program = base.open(rows);
        return {
          ...program,
          solve() {
            const answer = program.solve();
            spent.parts += (answer?.iterations ?? 0) * (answer?.columns.length ?? 0) * iterationWork;
            return answer;
          },
        };
      },
      solveWhole(rows, columns, limits) {
        const answer = base.solveWhole(rows, columns, limits);
        spent.wholes += answer.iterations * wholeIterationWork(rows.length + columns.length);
        return answer;
      },
    },
  };
}

/** So many lengths, in hundredths of a bar of ten thousand units and more. */
function manyLengths(lengths: number, each: number, stocks: StockProblem['stocks']): StockProblem {
  const longest = Math.min(...stocks.map(({ lengthMm }) => lengthMm));
  const counts: Record<number, number> = {};
  for (let at = 0; at < lengths; at++)
    counts[Math.floor(longest * (0.02 + 0.6 * ((at * 0.6180339887) % 1)))] = 1 + (at % (2 * each - 1));
  return squareProblem(counts, stocks);
}

describe('A search ends by what it counts', () => {
  test('with 1,000 lengths, 10,000 pieces and bars of a million units, with a plan, a bound and a gap', () => {
    const problem = manyLengths(1000, 10, [{ lengthMm: 1_000_000 }]);
    expect(problem.parts.length).toBeGreaterThan(990);
    const { solver, spent } = countingSolver();
    const plan = planStock(problem, { solver, limits: { work: 4e5 } });
    verifyPlan(problem, plan);
    expect(plan.shortages).toEqual([]);
    const neededMm = problem.parts.reduce((sum, { lengthMm, pieces }) => sum + lengthMm * pieces, 0);
    expect(plan.bound).toBeGreaterThanOrEqual(neededMm);
    expect(plan.purchase).toBeLessThan(1.02 * plan.bound);
    expect(plan.isStopped).toBe(false);
    expect(spent.parts).toBeGreaterThan(0);
    // One program may begin when little is left.
    expect(spent.parts).toBeLessThan(2 * 4e5);
  }, 120_000);

  test('also where several lengths with prices are to be had', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 60 }), fc.integer({ min: 2, max: 6 }), (lengths, stocks) => {
        const list = Array.from({ length: stocks }, (_, at) => ({
          lengthMm: 12_000 - 1009 * at,
          price: 100.37 - 7.93 * at,
        }));
        const problem = manyLengths(lengths, 4, list);
        const { solver, spent } = countingSolver();
        const plan = planStock(problem, { solver, limits: { workOfChoice: 2e5 } });
        expect(plan.bound).toBeLessThanOrEqual(plan.purchase);
        expect(plan.purchase - plan.bound).toBeLessThan(100.37);
        expect(spent.parts).toBeLessThan(2 * 2e5);
      }),
      { numRuns: 4 },
    );
  }, 120_000);

  test('twice with the same limits, with the same plan', () => {
    const problem = manyLengths(80, 3, [{ lengthMm: 100_003 }, { lengthMm: 70_001 }]);
    const plans = [1, 2].map(() =>
      JSON.stringify(planStock(problem, { solver: base, limits: { workOfChoice: 1e5 } })),
    );
    expect(plans[0]).toBe(plans[1]);
  }, 60_000);
});
