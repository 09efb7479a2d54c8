import os from 'node:os';
import path from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { Worker } from 'node:worker_threads';
import type { BatchSetting } from './batchDesk.js';
import type { FileJob, FileOutcome } from './fileOutcome.js';

/** Works on one file at a time. */
interface BatchWorker {
  work: (job: FileJob) => Promise<FileOutcome>;
  end: () => void;
}

export type OpenWorker = (setting: BatchSetting, jobs: number) => BatchWorker;

const megabyte = 1024 * 1024;

/** Memory for one of `jobs` threads: three quarters of the machine for all, and no more than a big workbook takes. */
const memoryMb = (jobs: number) =>
  Math.max(512, Math.min(8192, Math.floor((os.totalmem() * 0.75) / jobs / megabyte)));

/** Threads that fill the cores have none left that could collect what is dead beside them: each stops for its own. */
function collectAlone(): void {
  setFlagsFromString('--no-parallel-scavenge');
  setFlagsFromString('--no-concurrent-marking');
}

/**
 * Works in a thread, opened when there is a file for it. A file that ends the thread, by its size or by a fault of ours,
 * is told so, and the next file gets a new one.
 */
export const batchThread: OpenWorker = (setting, jobs) => {
  const limit = memoryMb(jobs);
  const fillsCores = jobs >= os.availableParallelism();
  let thread: Worker | undefined;
  let job: FileJob | undefined;
  let resolve: (outcome: FileOutcome) => void = () => {};

  function opened(): Worker {
    if (fillsCores) collectAlone();
    const worker = new Worker(path.join(setting.folder, 'batch.mjs'), {
      workerData: setting,
      // What Node was told for the program itself may be no option of a thread.
      execArgv: [],
      resourceLimits: { maxOldGenerationSizeMb: limit },
    });
    worker.on('message', (outcome: FileOutcome) => resolve(outcome));
    worker.on('error', (error: NodeJS.ErrnoException) =>
      lost(
        worker,
        error.code === 'ERR_WORKER_OUT_OF_MEMORY'
          ? `takes more than ${limit} MB of memory: do it alone, or with fewer jobs`
          : `was not done, by a fault of this program: ${error.message}`,
      ),
    );
    worker.on('exit', (code) => lost(worker, `was not done: its thread ended with ${code}`));
    return worker;
  }

  function lost(worker: Worker, why: string): void {
    if (worker !== thread || !job) return;
    thread = undefined;
    resolve({ in: job.source, state: 'refused', error: `${job.source} ${why}.` });
  }

  return {
    work: (next) =>
      new Promise((settle) => {
        [job, resolve] = [next, settle];
        thread ??= opened();
        thread.postMessage(next);
      }),
    end: () => {
      job = undefined;
      void thread?.terminate();
    },
  };
};
