import { openBrowserWorker } from './browserWorker.js';
import { PlanQueue } from './planQueue.js';

/** Plans in a worker of this page; for the whole page one, since all that ask share what was planned. */
export const planInWorker = new PlanQueue(openBrowserWorker).plan;
