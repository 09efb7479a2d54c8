import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { root } from '../../../scripts/ensure.mjs';

const longestBuildMs = 500_000;

/** What a browser of the tests opens is built once a run: a second build would pull the page from under the first. */
export async function builtOnce(folder: string, build: () => Promise<void>): Promise<void> {
  const run = process.env['TEST_RUN'];
  if (run === undefined) throw new Error('The configuration of the tests has given this run no name.');
  const mark = `${folder}.built`;
  const lock = `${folder}.lock`;
  mkdirSync(path.join(root, 'out'), { recursive: true });
  for (const giveUpAt = Date.now() + longestBuildMs; ; ) {
    try {
      mkdirSync(lock);
      break;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
      // Whoever holds it this long was ended while building.
      if (Date.now() > giveUpAt) break;
      await new Promise((resolve) => setTimeout(resolve, 200));
    }
  }
  try {
    if (existsSync(mark) && readFileSync(mark, 'utf8') === run) return;
    await build();
    writeFileSync(mark, run);
  } finally {
    rmSync(lock, { recursive: true, force: true });
  }
}
