// npm run mutants [-- --only src/core/force --quick --anew]: changes one place of the calculations at a time and sees
// whether a test notices. Prints the changes that none noticed, then a score for each folder. Takes hours for all.
// `--quick` leaves out what is done once when a file is loaded, such as the rows of a table: each costs a run of all
// tests. `--anew` tries again what is known of the last run; helpers of tests that changed are not noticed without it.
// Exit code 0: every folder reaches the least score, 1: one does not.
import { rmSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { ensurePackages, root } from './ensure.mjs';

const folders = ['src/core/force', 'src/core/rule', 'src/core/part'];
/** Percent of the mutants that a test has to notice. */
const leastScore = 85;

const { values } = parseArgs({
  options: {
    only: { type: 'string', multiple: true },
    quick: { type: 'boolean', default: false },
    anew: { type: 'boolean', default: false },
  },
});
const chosen = values.only ?? folders;
for (const place of chosen)
  if (!folders.some((folder) => place === folder || place.startsWith(`${folder}/`))) {
    console.error(`"${place}" is not among ${folders.join(', ')}: give one of these, or a file in it.`);
    process.exit(1);
  }

ensurePackages({ development: true });
process.chdir(root);
const { Stryker } = await import('@stryker-mutator/core');
const out = (...parts) => path.posix.join('out', 'mutants', ...parts);

for (const folder of folders) {
  const mutate = chosen.filter((place) => place === folder || place.startsWith(`${folder}/`));
  if (mutate.length === 0) continue;
  const results = await tryMutants(folder, mutate);
  const count = (...kinds) => results.filter(({ status }) => kinds.includes(status)).length;
  const missed = count('Survived', 'NoCoverage');
  const all = missed + count('Killed', 'Timeout');
  if (all === 0) throw new Error(`There is nothing to change in ${mutate.join(', ')}.`);
  const score = 100 * (1 - missed / all);
  console.log(`${folder}: ${all} mutants, ${missed} not noticed, score ${score.toFixed(1)}%`);
  if (score < leastScore) process.exitCode = 1;
}

/** Each folder is tried on its own tests: a table is read by all of them, so few make it quick. */
async function tryMutants(folder, places) {
  // Left behind where a run was broken off.
  rmSync(out('work'), { recursive: true, force: true });
  process.env.MUTANTS_OF = folder;
  process.env.MUTANTS_IN = places.join(' ');
  return await new Stryker({
    mutate: places.map((place) => (place.endsWith('.ts') ? place : `${place}/**/*.ts`)),
    // Texts are held by the tests of what is said.
    mutator: { excludedMutations: ['StringLiteral'] },
    plugins: ['@stryker-mutator/vitest-runner'],
    testRunner: 'vitest',
    vitest: { configFile: 'scripts/mutants/vitest.config.ts', related: false },
    coverageAnalysis: 'perTest',
    ignoreStatic: values.quick,
    concurrency: 1,
    timeoutMS: 20_000,
    tempDirName: out('work'),
    ignorePatterns: ['dist', 'out'],
    reporters: ['clear-text', 'json', 'progress-append-only'],
    clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportScoreTable: false },
    // What is known of the last run is not tried again: changes that were noticed by tests that are as they were.
    incremental: true,
    incrementalFile: out(`${path.basename(folder)}.json`),
    force: values.anew,
    jsonReporter: { fileName: out('last.json') },
    allowConsoleColors: false,
  }).runMutationTest();
}
