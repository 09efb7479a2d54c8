// Source: complete enumeration, written apart from the planner: 1,000 small problems, and 5,000 with STOCK=all, which takes
// a minute.
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { LinearSolver } from '../../../src/core/stock/linearSolver.js';
import { planStock } from '../../../src/core/stock/planStock.js';
import type { StockProblem } from '../../../src/core/stock/stockProblem.js';
import { loadSolver } from '../../../src/planner/highs.js';
import { smallProblems } from '../../core/stock/support.js';
import { cheapest, type Given } from './enumerate.js';

/** What the planner may count too much for a mitered piece: see `wholeUnits`. */
const roundedMm = 0.0075;
/** Of sums of prices. */
const tolerance = 1e-6;
const numRuns = process.env['STOCK'] === 'all' ? 2500 : 500;

/** On a busy machine. */
const mostMs = 300_000;

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadSolver();
});

function compare(problem: StockProblem): void {
  const plan = planStock(problem, { solver });
  const tooLong = new Set(plan.shortages.filter(({ why }) => why === 'too long').map(({ part }) => part));
  problem.parts.forEach((_, part) => {
    const pieces = problem.parts.map((__, at) => (at === part ? 1 : 0));
    const alone = {
      problem: { ...problem, stocks: problem.stocks.map((each) => ({ ...each, price: 1 })) },
      pieces,
    };
    if (!tooLong.has(part)) expect(cheapest({ ...alone, slackMm: 0 })).toBe(1);
    else expect(cheapest({ ...alone, slackMm: roundedMm })).toBe(Infinity);
  });
  const pieces = problem.parts.map((part, at) => (tooLong.has(at) ? 0 : part.pieces));
  const given: Given = { problem, pieces, slackMm: 0 };
  const least = cheapest(given);
  const most = cheapest({ ...given, slackMm: roundedMm });
  const isShort = plan.shortages.some(({ why }) => why === 'not enough bars');
  if (Number.isFinite(most)) expect(isShort).toBe(false);
  if (!Number.isFinite(least)) expect(isShort).toBe(true);
  if (isShort) {
    expect(plan.proof).toBeUndefined();
    return;
  }
  expect(plan.purchase).toBeGreaterThanOrEqual(least - tolerance);
  expect(plan.bound).toBeLessThanOrEqual(most + tolerance);
  // Problems as small as these are proven without exception.
  expect(plan.proof).toBeDefined();
  expect(plan.purchase).toBeLessThanOrEqual(most + tolerance);
}

describe('Against complete enumeration, a plan is never infeasible, its bound never wrong, and it is the least', () => {
  test(
    'square parts',
    () => {
      fc.assert(fc.property(smallProblems({ isMitered: false }), compare), { numRuns });
    },
    mostMs,
  );

  test(
    'mitered parts, turned over and round, round, or not at all',
    () => {
      fc.assert(fc.property(smallProblems(), compare), { numRuns });
    },
    mostMs,
  );
});
