import { InputError } from '../core/inputError.js';
import { planStock } from '../core/stock/planStock.js';
import type { StockPlan } from '../core/stock/stockPlan.js';
import type { StockProblem } from '../core/stock/stockProblem.js';
import { loadSolver } from './highs.js';
import type { PlannerAnswer } from './protocol.js';

/** Counts of steps end the search, the same everywhere; this only where a machine is very slow. */
const longestMs = 120_000;

/**
 * The worker's side, in whatever worker: plans one problem and answers what comes of it. Where the solver does not load,
 * since its file is missing or the page may not run it, the plan is made by steps only, and says so.
 */
export async function answerRequest(
  problem: StockProblem,
  answer: (answer: PlannerAnswer) => void,
  load: typeof loadSolver = loadSolver,
): Promise<void> {
  const onBest = (plan: StockPlan) => answer({ kind: 'best', plan });
  const clock = { now: () => performance.now(), longestMs };
  try {
    const solver = await load().catch(() => undefined);
    answer({ kind: 'done', plan: planStock(problem, { onBest, clock, ...(solver && { solver }) }) });
  } catch (error) {
    if (error instanceof InputError) answer({ kind: 'refused', failure: error.failure });
    else answer({ kind: 'failed', reason: error instanceof Error ? error.message : String(error) });
  }
}
