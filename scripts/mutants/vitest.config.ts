// What the mutants of `npm run mutants` are tried on: the tests that say something of these folders, those by path of the
// files that are changed first, then the quickest, since a mutant is done with at the first test that fails.
import { existsSync, readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const { MUTANTS_OF: folder = '', MUTANTS_IN: places = '' } = process.env;

/** Files and folders, in the order in which they run. */
const triedOn: Record<string, string[]> = {
  'src/core/force': [
    'tests/core/force',
    'tests/checks/punchForce.test.ts',
    'tests/checks/shearForce.test.ts',
    'tests/checks/pressPractice.test.ts',
  ],
  'src/core/rule': [
    'tests/core/rule',
    'tests/checks/boltHoles.test.ts',
    'tests/checks/connectionEnds.test.ts',
    'tests/checks/edgeDistances.test.ts',
    'tests/checks/holeDistances.test.ts',
    'tests/checks/jobSpecs.test.ts',
    'tests/checks/pressPractice.test.ts',
    'tests/checks/toolRules.test.ts',
    'tests/checks/functions/holesAndGages.test.ts',
  ],
  'src/core/part': [
    'tests/core/part/bentSpans.test.ts',
    'tests/core/part/cutHand.test.ts',
    'tests/core/part/flangeBeside.test.ts',
    'tests/core/part/holeShape.test.ts',
    'tests/core/part/heelDistance.test.ts',
    'tests/core/part/outlineOf.test.ts',
    'tests/core/part/shape.test.ts',
    'tests/core/part/mostPoints.test.ts',
    'tests/core/part',
    'tests/checks/part/bentLegs.test.ts',
    'tests/checks/part/bendReferee.test.ts',
    'tests/checks/part/partReferee.test.ts',
  ],
};
const tried = triedOn[folder];
if (!tried) throw new Error(`MUTANTS_OF is "${folder}": give one of ${Object.keys(triedOn).join(', ')}.`);

const byPath = places
  .split(' ')
  .map((place) => place.replace(/^src/, 'tests').replace(/\.ts$/, '.test.ts'))
  .filter((place) => place.endsWith('.test.ts') && existsSync(place));

const include = [
  ...new Set(
    [...byPath, ...tried].flatMap((place) =>
      place.endsWith('.test.ts')
        ? [place]
        : readdirSync(place, { recursive: true, encoding: 'utf8' })
            .map((file) => path.posix.join(place, file.replaceAll('\\', '/')))
            .filter((file) => file.endsWith('.test.ts'))
            .sort((a, b) => statSync(a).size - statSync(b).size),
    ),
  ),
];

/** Keeps the order of the list. */
class InOrder extends BaseSequencer {
  override sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification) => include.findIndex((file) => moduleId.endsWith(file));
    return Promise.resolve([...files].sort((a, b) => place(a) - place(b)));
  }
}

export default defineConfig({
  test: {
    include,
    isolate: false,
    setupFiles: ['tests/support/oneSeed.ts', 'scripts/mutants/fewRuns.ts'],
    sequence: { sequencer: InOrder },
    testTimeout: 600_000,
    // A slice of the random parts: all of them take too long for every mutant.
    env: { REFEREE_PARTS: '20' },
  },
});
