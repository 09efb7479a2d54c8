import type { Shop } from '../../core/shop/readShop.js';
import type { ListPlan } from '../../core/stock/list/jobPlan.js';
import { planJobs } from '../../core/stock/list/planJobs.js';
import type { StockJob, StockJobs } from '../../core/stock/list/stockJob.js';
import type { StockPlan } from '../../core/stock/stockPlan.js';
import { planInWorker } from '../../planner/planInWorker.js';
import { PlanStopped } from '../../planner/planQueue.js';

/** The plan of a list, and the jobs that were not begun when it was stopped. */
export interface PanePlan {
  plan: ListPlan;
  notBegun: readonly StockJob[];
}

/** Hears of the job in work: none of its plans yet, or the best so far. */
export type OnJob = (job: StockJob, at: number, best: StockPlan | undefined) => void;

/** Plans the jobs one after the other; when it is stopped, the best plan so far of the job in work is kept. */
export async function planList(
  jobs: StockJobs,
  shop: Shop,
  { signal, onJob }: { signal: AbortSignal; onJob: OnJob },
): Promise<PanePlan> {
  const notBegun: StockJob[] = [];
  let plan = await planJobs({ ...jobs, jobs: [] }, shop, refuseAny);
  for (const [at, job] of jobs.jobs.entries()) {
    try {
      const own = await planJobs({ ...jobs, jobs: [job] }, shop, (problem) => {
        if (signal.aborted) throw new PlanStopped();
        onJob(job, at, undefined);
        return planInWorker(problem, { signal, onBest: (best) => onJob(job, at, best) });
      });
      plan = {
        ...plan,
        planned: [...plan.planned, ...own.planned],
        unplanned: [...plan.unplanned, ...own.unplanned],
      };
    } catch (error) {
      if (!(error instanceof PlanStopped)) throw error;
      notBegun.push(job);
    }
  }
  return { plan, notBegun };
}

function refuseAny(): never {
  throw new Error('there is no job to plan');
}
