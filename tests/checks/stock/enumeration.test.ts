// Source: complete enumeration, written apart from the planner and sharing none of its arithmetic but the model of the
// miters, which `miteredBars.test.ts` holds against polygons.
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { LinearSolver } from '../../../src/core/stock/linearSolver.js';
import { planStock } from '../../../src/core/stock/planStock.js';
import type { StockProblem } from '../../../src/core/stock/stockProblem.js';
import { loadSolver } from '../../../src/planner/highs.js';
import { smallProblems } from '../../core/stock/support.js';
import { cheapest } from './enumerate.js';

/** What the planner may count too much in a bar of six mitered pieces. */
const roundedMm = 0.06;

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadSolver();
});

function compare(problem: StockProblem): void {
  const plan = planStock(problem, { solver });
  const least = cheapest(problem, 0);
  const isMitered = problem.parts.some(
    ({ leanLeftRad, leanRightRad }) => leanLeftRad !== 0 || leanRightRad !== 0,
  );
  const most = isMitered ? cheapest(problem, roundedMm) : least;
  const isShort = plan.shortages.some(({ why }) => why === 'not enough bars');
  if (Number.isFinite(most)) expect(isShort).toBe(false);
  if (!Number.isFinite(least)) expect(isShort).toBe(true);
  if (isShort) {
    expect(plan.proof).toBeUndefined();
    return;
  }
  expect(plan.purchase).toBeGreaterThanOrEqual(least - 1e-6);
  expect(plan.bound).toBeLessThanOrEqual(most + 1e-6);
  // Problems as small as these are proven without exception.
  expect(plan.proof).toBeDefined();
  expect(plan.purchase).toBeLessThanOrEqual(most + 1e-6);
}

describe('Against complete enumeration, a plan is never infeasible, its bound never wrong, and it is the least', () => {
  test('square parts', () => {
    fc.assert(fc.property(smallProblems({ isMitered: false }), compare), { numRuns: 600 });
  });

  test('mitered parts, turned over and round, round, or not at all', () => {
    fc.assert(fc.property(smallProblems(), compare), { numRuns: 600 });
  });
});
