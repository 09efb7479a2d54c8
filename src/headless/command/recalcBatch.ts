import { lstat, stat } from 'node:fs/promises';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';
import { batchDesk } from '../batch/batchDesk.js';
import { batchFiles, resultOf } from '../batch/batchFiles.js';
import { BatchCount, fileLine, summaryLines } from '../batch/batchSummary.js';
import { batchThread } from '../batch/batchThreads.js';
import { runBatch } from '../batch/runBatch.js';
import { typedPath } from '../files/readFile.js';
import type { CommandSetting } from './output.js';

export interface BatchCall {
  files: string[];
  out: string;
  jobs: number;
  again: boolean;
  json: boolean;
  shop: string | undefined;
}

/**
 * Recalculates files and folders of files into a folder. The exit code is that of the worst file: 0: done, 1: unreadable
 * or refused, 3: done, some cells are stale.
 */
export async function recalcBatch(call: BatchCall, setting: CommandSetting): Promise<number> {
  const { out, again, json, shop } = call;
  const folder = setting.folder ?? import.meta.dirname;
  try {
    await refuseNoFolder(out);
    // A shop that cannot be read is told once, not for each file.
    if (shop !== undefined) await batchDesk({ folder, out, shop });
  } catch (error) {
    if (!(error instanceof WorkbookRefused)) throw error;
    setting.err(`${error.message}\n`);
    return 1;
  }
  const files = await batchFiles(call.files, out);
  const jobs = files.map((file) =>
    'error' in file
      ? { in: file.source, state: 'refused' as const, error: file.error }
      : { source: file.source, target: resultOf(file.source, out, shop === undefined ? '' : '.json'), again },
  );
  const count = new BatchCount();
  const progress = (text: string) => setting.progress?.(text);
  await runBatch(
    jobs,
    { workers: call.jobs, open: setting.openWorker ?? batchThread, setting: { folder, out, shop } },
    (outcome) => {
      count.add(outcome);
      progress('');
      setting.out(`${json ? JSON.stringify(outcome) : fileLine(outcome)}\n`);
    },
    (done) => progress(`${done} of ${jobs.length} …`),
  );
  progress('');
  setting.out(
    json ? `${JSON.stringify({ summary: count.summary() })}\n` : `\n${summaryLines(count, out).join('\n')}\n`,
  );
  return count.exitCode();
}

/** The folder of the results may be made; a file of that name is not replaced. */
async function refuseNoFolder(out: string): Promise<void> {
  const found = await stat(typedPath(out)).catch(() => undefined);
  if (found?.isDirectory()) return;
  if (await lstat(typedPath(out)).catch(() => undefined))
    throw new WorkbookRefused(`${out} is no folder: name one with --out for the results.`);
}
