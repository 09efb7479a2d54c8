import { InputError } from '../core/inputError.js';
import { planStock } from '../core/stock/planStock.js';
import type { StockPlan } from '../core/stock/stockPlan.js';
import type { StockProblem } from '../core/stock/stockProblem.js';
import type { PlannerAnswer } from './protocol.js';

/** The worker's side, in whatever worker: plans one problem and answers what comes of it. */
export function answerRequest(problem: StockProblem, answer: (answer: PlannerAnswer) => void): void {
  const onBest = (plan: StockPlan) => answer({ kind: 'best', plan });
  try {
    answer({ kind: 'done', plan: planStock(problem, { onBest }) });
  } catch (error) {
    if (error instanceof InputError) answer({ kind: 'refused', failure: error.failure });
    else answer({ kind: 'failed', reason: error instanceof Error ? error.message : String(error) });
  }
}
