import { useEffect, useRef, useState } from 'react';
import { InputError } from '../../core/inputError.js';
import type { Shop } from '../../core/shop/readShop.js';
import type { StockJobs } from '../../core/stock/list/stockJob.js';
import { soFarWords } from '../../core/say/stockPlanSentences.js';
import { PlannerFailed } from '../../planner/planQueue.js';
import { useKept } from '../shared/useKept.js';
import { jobName } from './jobName.js';
import { type PanePlan, planList } from './planList.js';

export type PlanState =
  | { at: 'idle' }
  | { at: 'planning'; done: number; total: number; says: string }
  | { at: 'done'; answer: PanePlan; of: string }
  | { at: 'failed'; message: string };

/** Makes the plan of a list, can be told to stop and keep the best, and keeps the answer while the pane is open. */
export function usePlan(jobs: StockJobs, shop: Shop) {
  const kept = useKept<PlanState>('stock plan', () => ({ at: 'idle' }));
  const [state, setState] = useState(kept.value);
  const aborter = useRef<AbortController>(undefined);
  useEffect(() => () => aborter.current?.abort(), []);
  const finish = (next: PlanState) => {
    kept.set(next);
    setState(next);
  };
  const start = async () => {
    const own = new AbortController();
    aborter.current = own;
    const total = jobs.jobs.length;
    setState({ at: 'planning', done: 0, total, says: 'Looking for the first plan' });
    try {
      const answer = await planList(jobs, shop, {
        signal: own.signal,
        onJob: (job, done, best) => {
          const { currency } = shop.settings.settings;
          const soFar = best ? soFarWords(best, job, currency, shop.unit) : 'looking for the first plan';
          setState({ at: 'planning', done, total, says: `${jobName(job)}: ${soFar}` });
        },
      });
      finish({ at: 'done', answer, of: contentOf(jobs, shop) });
    } catch (error) {
      finish({ at: 'failed', message: messageOf(error) });
    }
  };
  const isOfBefore = state.at === 'done' && state.of !== contentOf(jobs, shop);
  return { state, isOfBefore, start: () => void start(), stop: () => aborter.current?.abort() };
}

/** Everything a plan shows, as text: another text, another plan. */
function contentOf({ jobs, losses }: StockJobs, { stamp }: Shop): string {
  return JSON.stringify([
    stamp,
    losses,
    jobs.map(({ key, parts, stocks, kerf }) => [
      key,
      stocks,
      kerf,
      parts.map(({ mark, pieces, longMm, leanLeftRad, leanRightRad }) => [
        mark,
        pieces,
        longMm,
        leanLeftRad,
        leanRightRad,
      ]),
    ]),
  ]);
}

function messageOf(error: unknown): string {
  if (error instanceof InputError) return error.message;
  const reason = error instanceof Error ? error.message : String(error);
  const what = error instanceof PlannerFailed ? 'The planner could not run' : 'Planning failed';
  return `${what} (${reason}). The workbook is as it was. Open the pane again and plan once more; if it fails again, please report it.`;
}
