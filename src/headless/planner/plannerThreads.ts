import path from 'node:path';
import { Worker } from 'node:worker_threads';
import type { OpenPlanner, PlannerAnswer } from '../../planner/protocol.js';

/** Plans in a thread of its own; the built script lies in `folder`. */
export function plannerThreads(folder: string): OpenPlanner {
  return (hear) => {
    const thread = new Worker(path.join(folder, 'planner.mjs'));
    thread.on('message', (answer: PlannerAnswer) => hear(answer));
    thread.on('error', ({ message }) => hear({ kind: 'failed', reason: message }));
    return { ask: (problem) => thread.postMessage(problem), end: () => void thread.terminate() };
  };
}
