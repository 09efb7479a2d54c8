import type { Shop } from '../../shop/readShop.js';
import { setting } from '../../shop/setting.js';
import type { StockPlan } from '../stockPlan.js';
import type { StockProblem } from '../stockProblem.js';
import type { ListPlan, PlannedJob, UnplannedJob } from './jobPlan.js';
import { plannedJob } from './plannedJob.js';
import { problemOf } from './problemOf.js';
import type { StockJob, StockJobs } from './stockJob.js';

/** Plans the problem of a job, here or elsewhere. */
export type PlanProblem = (problem: StockProblem, job: StockJob) => StockPlan | Promise<StockPlan>;

/**
 * Plans the jobs of a list one after the other; jobs without stock lengths, and those whose stock cannot be read, are
 * named instead.
 * @param jobs the jobs of `stockJobs`
 * @param shop its shop; `Material price` prices what the Stock table does not
 * @param plan plans one problem
 * @returns lengths in mm, masses in kg, money in the currency of the shop
 * Valid for every list. Throws what `plan` throws, and `invalid` for a setting that cannot be read.
 * @example await planJobs(jobs, shop, (problem) => planStock(problem))
 * Source: common practice, no source.
 */
export async function planJobs(jobs: StockJobs, shop: Shop, plan: PlanProblem): Promise<ListPlan> {
  const planned: PlannedJob[] = [];
  const unplanned: UnplannedJob[] = [];
  const pricePerKg = setting(shop, 'materialPricePerKg');
  const { jobs: all, ...rest } = jobs;
  for (const job of all) {
    const why = whyUnplanned(job);
    if (why) unplanned.push({ job, why });
    else planned.push(plannedJob(job, await plan(problemOf(job, jobs.losses), job), pricePerKg));
  }
  return {
    ...rest,
    unit: shop.unit,
    currency: setting(shop, 'currency'),
    stamp: shop.stamp,
    planned,
    unplanned,
  };
}

/** Why a job cannot be planned as it stands; undefined where it can. */
export function whyUnplanned({ stocks, unreadable }: StockJob): UnplannedJob['why'] | undefined {
  if (unreadable.length > 0) return 'unreadable stock';
  return stocks.length === 0 ? 'no stock' : undefined;
}
