import { parentPort, workerData } from 'node:worker_threads';
import { batchDesk, type BatchSetting } from './batchDesk.js';
import type { FileJob } from './fileOutcome.js';

/* Works on files of a batch in a thread of its own, one after the other. */

const desk = batchDesk(workerData as BatchSetting);

parentPort?.on('message', (job: FileJob) => {
  // What goes wrong beyond a refusal ends the thread, and is told by it.
  void desk.then((work) => work(job)).then((outcome) => parentPort?.postMessage(outcome));
});
