import type { PlannerAnswer, PlannerWorker } from './protocol.js';

/** Beside the page, as the functions are. */
const script = 'planner.js';

/** The planner in a worker of the browser: its script and the solver are loaded now, and not before. */
export function openBrowserWorker(hear: (answer: PlannerAnswer) => void): PlannerWorker {
  if (typeof Worker !== 'function') throw new Error('there are no workers in this program');
  const worker = new Worker(new URL(script, document.baseURI));
  worker.addEventListener('message', ({ data }: MessageEvent<PlannerAnswer>) => hear(data));
  worker.addEventListener('error', (event) => {
    event.preventDefault();
    const reason = event.message || `its file ${script} did not load`;
    hear({ kind: 'failed', reason });
  });
  return { ask: (problem) => worker.postMessage(problem), end: () => worker.terminate() };
}
