import { boughtName } from '../../core/stock/list/planWords.js';
import type { StockJob } from '../../core/stock/list/stockJob.js';

/** What a job is called: its section as it is bought, and its grade. */
export function jobName(job: Pick<StockJob, 'section' | 'grade'>): string {
  return `${boughtName(job)}, ${job.grade.name}`;
}
