import { InputError } from '../core/inputError.js';
import type { StockPlan } from '../core/stock/stockPlan.js';
import type { StockProblem } from '../core/stock/stockProblem.js';
import type { OpenPlanner, PlannerAnswer, PlannerWorker } from './protocol.js';

export interface PlanOptions {
  /** Hears of every plan that is better than the one before, each with its bound. */
  onBest?: ((plan: StockPlan) => void) | undefined;
  /** Stops it: the best plan so far is the answer, marked as stopped. */
  signal?: AbortSignal | undefined;
}

/** Plans a problem, somewhere else than where it is asked. */
export type PlanInWorker = (problem: StockProblem, options?: PlanOptions) => Promise<StockPlan>;

/** It was stopped before there was any plan. */
export class PlanStopped extends Error {
  constructor() {
    super('It was stopped before there was a plan.');
    this.name = 'PlanStopped';
  }
}

/** The planner could not run. */
export class PlannerFailed extends Error {
  constructor(reason: string) {
    super(reason);
    this.name = 'PlannerFailed';
  }
}

interface Asker {
  onBest?: ((plan: StockPlan) => void) | undefined;
  resolve(plan: StockPlan): void;
  reject(reason: Error): void;
}

interface Job {
  key: string;
  problem: StockProblem;
  best?: StockPlan;
  askers: Set<Asker>;
}

/** Plans of a workbook are few, and each may have thousands of pieces. */
const plansKept = 100;

/**
 * One problem after the other in one worker, which lives as long as there is something to plan. A problem that was
 * planned is not planned again, one that is asked for twice at once is planned once, and the work ends when nobody waits
 * for it any more. A plan made without the solver is not kept: the solver may load the next time.
 */
export class PlanQueue {
  private readonly known = new Map<string, StockPlan>();
  /** Those that are not answered yet, the one in work first. */
  private readonly jobs = new Map<string, Job>();
  private worker: PlannerWorker | undefined;
  private isWorking = false;

  constructor(private readonly open: OpenPlanner) {}

  readonly plan: PlanInWorker = (problem, { onBest, signal } = {}) => {
    const key = contentOf(problem);
    const known = this.known.get(key);
    if (known) return Promise.resolve(known);
    if (signal?.aborted) return Promise.reject(new PlanStopped());
    const job = this.jobs.get(key) ?? { key, problem, askers: new Set<Asker>() };
    return new Promise<StockPlan>((resolve, reject) => {
      const stop = () => this.leave(job, asker);
      const over = () => signal?.removeEventListener('abort', stop);
      const asker: Asker = {
        onBest,
        resolve: (plan) => (over(), resolve(plan)),
        reject: (reason) => (over(), reject(reason)),
      };
      job.askers.add(asker);
      this.jobs.set(key, job);
      signal?.addEventListener('abort', stop);
      if (job.best) onBest?.(job.best);
      this.work();
    });
  };

  /** Takes up the next problem, or lets the worker go where there is none. */
  private work(): void {
    if (this.isWorking) return;
    const [job] = this.jobs.values();
    if (!job) {
      this.endWorker();
      return;
    }
    this.isWorking = true;
    try {
      this.worker ??= this.openWorker();
      this.worker.ask(job.problem);
    } catch (error) {
      this.settle(job, { kind: 'failed', reason: error instanceof Error ? error.message : String(error) });
    }
  }

  /** Answers of a worker that was ended in between are for nobody. */
  private openWorker(): PlannerWorker {
    let isOurs = () => true;
    const worker = this.open((answer) => {
      const [job] = this.jobs.values();
      if (isOurs() && this.isWorking && job) this.hear(job, answer);
    });
    isOurs = () => this.worker === worker;
    return worker;
  }

  private hear(job: Job, answer: PlannerAnswer): void {
    if (answer.kind !== 'best') {
      this.settle(job, answer);
      return;
    }
    job.best = answer.plan;
    for (const { onBest } of job.askers) onBest?.(answer.plan);
  }

  private settle(job: Job, answer: Exclude<PlannerAnswer, { kind: 'best' }>): void {
    this.jobs.delete(job.key);
    this.isWorking = false;
    if (answer.kind === 'failed') this.endWorker();
    if (answer.kind === 'done') this.keep(job.key, answer.plan);
    for (const asker of job.askers) {
      if (answer.kind === 'done') asker.resolve(answer.plan);
      else if (answer.kind === 'refused') asker.reject(new InputError(answer.failure));
      else asker.reject(new PlannerFailed(answer.reason));
    }
    this.work();
  }

  private leave(job: Job, asker: Asker): void {
    if (!job.askers.delete(asker)) return;
    if (job.best) asker.resolve({ ...job.best, isStopped: true });
    else asker.reject(new PlanStopped());
    if (job.askers.size > 0) return;
    const [inWork] = this.jobs.values();
    this.jobs.delete(job.key);
    if (job !== inWork) return;
    this.endWorker();
    this.isWorking = false;
    this.work();
  }

  private keep(key: string, plan: StockPlan): void {
    if (plan.by === 'steps only') return;
    const [oldest] = this.known.keys();
    if (this.known.size >= plansKept && oldest !== undefined) this.known.delete(oldest);
    this.known.set(key, plan);
  }

  private endWorker(): void {
    this.worker?.end();
    this.worker = undefined;
  }
}

/** Everything a plan depends on, as text. */
function contentOf({ parts, stocks, ...bar }: StockProblem): string {
  return JSON.stringify([
    parts.map((part) => [part.lengthMm, part.pieces, part.leanLeftRad, part.leanRightRad]),
    stocks.map(({ lengthMm, price, available }) => [lengthMm, price ?? null, available ?? null]),
    [bar.widthMm, bar.turning, bar.kerfMm, bar.trimMm, bar.gripMm, bar.keepMm],
  ]);
}
