import { readFileSync } from 'node:fs';
import path from 'node:path';
import {
  loadFunctions,
  readSheetValues,
  recalculateWorkbook,
  WorkbookRefused,
  type FunctionsMetadata,
} from '../../../src/headless/index.js';

/*
 * Recalculates the files it is given, and says of each in a line what came out and what it took: in yardsticks, a piece of
 * work that takes about 0.1 s on a machine that does nothing else. Beside other work everything takes longer, it too.
 */

function yardstick(): number {
  const before = process.cpuUsage();
  const words = new Map<string, { at: number; text: string }>();
  for (let at = 0; at < 60_000; at++) {
    const text = `A${at}:B${(at * 7919) % 60_000}`;
    words.set(text, { at, text: text.slice(1).replace(/\d+/g, (digits) => `${digits}0`) });
  }
  if (words.size !== 60_000) throw new Error('The yardstick counts wrong.');
  return cpuMsSince(before);
}

function cpuMsSince(before: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

const [folder = '', ...files] = process.argv.slice(2);
const read = (name: string) => readFileSync(path.join(folder, name), 'utf8');
const functions = loadFunctions(
  read('functions.js'),
  JSON.parse(read('functions.json')) as FunctionsMetadata,
);

for (const file of files) {
  const bytes = new Uint8Array(readFileSync(file));
  const measured = yardstick();
  const before = process.cpuUsage();
  const outcome = await recalculateWorkbook(bytes, functions).catch((error: unknown) => error as Error);
  const cpuMs = cpuMsSince(before);
  const yardsticks = (2 * cpuMs) / (measured + yardstick());
  const took = { cpuMs, yardsticks, megabytes: process.resourceUsage().maxRSS / 1024 };
  const result =
    outcome instanceof Error
      ? { refused: outcome instanceof WorkbookRefused, message: outcome.message }
      : {
          first: readSheetValues(outcome.bytes, 'Quote')
            .flat()
            .find((value) => value !== null && typeof value !== 'string'),
          pinned: outcome.report.pinned.map(({ cell, why }) => `${cell} ${why}`).slice(0, 4),
          calculated: outcome.report.calculated,
        };
  process.stdout.write(`${JSON.stringify({ ...took, ...result })}\n`);
}
