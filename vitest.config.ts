import { randomUUID } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import path from 'node:path';
import { defineConfig } from 'vitest/config';

const files = readdirSync('tests', { recursive: true, encoding: 'utf8' })
  .map((file) => path.posix.join('tests', file.replaceAll('\\', '/')))
  .filter((file) => file.endsWith('.test.ts') && !file.startsWith('tests/referee/'));

/** Tests with side effects: bundles, browsers, and what says at its top in which environment it wants to run. */
const ownWorld = files.filter(
  (file) =>
    /^tests\/(?:browser|contract|package)\//.test(file) ||
    readFileSync(file, 'utf8').startsWith('// @vitest-environment'),
);

/** All others share the modules they import: importing takes longer than testing. */
const shared = files.filter((file) => !ownWorld.includes(file));

const options = {
  testTimeout: 600_000,
  hookTimeout: 600_000,
  pool: 'forks' as const,
  // What is built for the browsers is built once a run.
  env: { TEST_RUN: randomUUID() },
  setupFiles: ['tests/support/oneSeed.ts', 'tests/support/refereeAll.ts'],
};

export default defineConfig({
  test: {
    // By default one core is kept for the runner itself, which is half of a small machine.
    maxWorkers: availableParallelism(),
    projects: [
      { test: { ...options, name: 'shared', include: shared, isolate: false } },
      { test: { ...options, name: 'own world', include: ownWorld } },
    ],
  },
});
