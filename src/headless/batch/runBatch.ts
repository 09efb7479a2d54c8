import type { BatchSetting } from './batchDesk.js';
import type { OpenWorker } from './batchThreads.js';
import type { FileJob, FileOutcome } from './fileOutcome.js';

/** Works on files side by side and tells of each in the order of the list. */
export async function runBatch(
  jobs: readonly (FileJob | FileOutcome)[],
  { workers, open, setting }: { workers: number; open: OpenWorker; setting: BatchSetting },
  tell: (outcome: FileOutcome) => void,
  onDone: (done: number) => void,
): Promise<void> {
  const outcomes: (FileOutcome | undefined)[] = [];
  let [next, told, done] = [0, 0, 0];
  const one = async () => {
    const worker = open(setting, workers);
    for (let at = next++; at < jobs.length; at = next++) {
      const job = jobs[at] as FileJob | FileOutcome;
      outcomes[at] = 'state' in job ? job : await worker.work(job);
      onDone(++done);
      for (let ready = outcomes[told]; ready; ready = outcomes[told]) {
        outcomes[told++] = undefined;
        tell(ready);
      }
    }
    worker.end();
  };
  await Promise.all(Array.from({ length: Math.min(workers, jobs.length) }, one));
}
