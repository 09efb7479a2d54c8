import { readFileSync } from 'node:fs';
import path from 'node:path';
import {
  loadFunctions,
  readSheetValues,
  recalculateWorkbook,
  WorkbookRefused,
  type FunctionsMetadata,
} from '../../../src/headless/index.js';

/* Recalculates the files it is given, and says of each in a line what came out and what it took. */

const [folder = '', ...files] = process.argv.slice(2);
const read = (name: string) => readFileSync(path.join(folder, name), 'utf8');
const functions = loadFunctions(
  read('functions.js'),
  JSON.parse(read('functions.json')) as FunctionsMetadata,
);

for (const file of files) {
  const bytes = new Uint8Array(readFileSync(file));
  const before = process.cpuUsage();
  const outcome = await recalculateWorkbook(bytes, functions).catch((error: unknown) => error as Error);
  const { user, system } = process.cpuUsage(before);
  const took = { cpuMs: (user + system) / 1000, megabytes: process.resourceUsage().maxRSS / 1024 };
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
