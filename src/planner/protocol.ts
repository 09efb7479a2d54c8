import type { Failure } from '../core/inputError.js';
import type { StockPlan } from '../core/stock/stockPlan.js';
import type { StockProblem } from '../core/stock/stockProblem.js';

/*
 * What goes between whoever wants a plan and the worker that makes it. Asked is one problem at a time; the answers are
 * plans, each better than the one before, and then one of the three endings.
 */

export type PlannerAnswer =
  | { kind: 'best'; plan: StockPlan }
  | { kind: 'done'; plan: StockPlan }
  /** The problem cannot be read as one: somebody else's fault, told in a sentence. */
  | { kind: 'refused'; failure: Failure }
  /** The planner could not run, or has a fault of its own. */
  | { kind: 'failed'; reason: string };

/** Wherever plans are made: a worker of a browser, a thread of Node. */
export interface PlannerWorker {
  /** Asks for a plan; what was asked before must have been answered. */
  ask(problem: StockProblem): void;
  /** Ends it at once, in the middle of its work too. */
  end(): void;
}

/** Starts a worker and tells of its answers. Throws, or answers `failed`, where none can be had. */
export type OpenPlanner = (hear: (answer: PlannerAnswer) => void) => PlannerWorker;
