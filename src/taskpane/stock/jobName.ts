import type { StockJob } from '../../core/stock/list/stockJob.js';

/** What a job is called: its section and its grade. */
export function jobName({ section, grade }: Pick<StockJob, 'section' | 'grade'>): string {
  return `${section.designation}, ${grade.name}`;
}
