// A word with blank cells holds for every way to fill them in.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { verdictKind } from '../../../src/core/check/verdict.js';
import { shopWith } from '../../support/sampleShop.js';
import { checkRow } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { noteOf } from '../../../src/core/say/noteOf.js';
import { type Cells, wholeRow } from './support/randomRow.js';

const shop = shopWith({
  'Angle shear leg square': 6,
  'Angle shear thickness square': '3/4',
  'Bend length': 30,
  'Bend V openings': '1, 2, 3',
  'Punch largest hole': 3,
});

function check(cells: Cells) {
  const result = checkRow(Object.values(cells), readHeadings(Object.keys(cells)), shop);
  if (result.blank) throw new Error('the row is blank');
  const isLoose = result.findings.some((each) => each.rule === 'not held' && each.why === 'loose bolt');
  return { verdict: result.verdict, kind: verdictKind(result.verdict), note: noteOf(result, 'in'), isLoose };
}

/** The row with some of its places filled in. */
function withPlaces(given: Cells, places: Cells, keep: (heading: string, at: number) => boolean): Cells {
  return {
    ...given,
    ...Object.fromEntries(Object.entries(places).filter(([heading], at) => keep(heading, at))),
  };
}

describe('a row with blank cells', () => {
  it('passes or fails only where every way to fill them in does', () => {
    let [passed, failed] = [0, 0];
    fc.assert(
      fc.property(
        wholeRow,
        fc.array(wholeRow, { minLength: 4, maxLength: 4 }),
        fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 24, maxLength: 24 }),
        (row, others, blank) => {
          const kept = withPlaces(row.given, row.places, (_, at) => blank[at] !== 0);
          const word = check(kept);
          if (word.kind === 'passes') passed += 1;
          if (word.kind === 'fails') failed += 1;
          if (word.kind !== 'passes' && word.kind !== 'elsewhere' && word.kind !== 'fails') return;
          for (const { places } of [row, ...others]) {
            const own = Object.fromEntries(
              Object.entries(places).filter(([heading]) => heading in row.places),
            );
            const filled = { ...row.given, ...row.places, ...own, ...kept };
            const whole = check(filled);
            // Cells that contradict each other, or that place a hole beside the part, are no way to fill them in.
            if (whole.verdict === 'Check input' || whole.isLoose) continue;
            const same = word.kind === 'fails' ? ['fails'] : ['passes', 'elsewhere'];
            expect(same, told(kept, word, filled, whole)).toContain(whole.kind);
          }
        },
      ),
      { numRuns: 700 },
    );
    expect(passed).toBeGreaterThan(5);
    expect(failed).toBeGreaterThan(60);
  });
});

function told(
  kept: Cells,
  word: ReturnType<typeof check>,
  filled: Cells,
  whole: ReturnType<typeof check>,
): string {
  return [
    `${JSON.stringify(kept)} is ${word.verdict}: ${word.note}`,
    `${JSON.stringify(filled)} is ${whole.verdict}: ${whole.note}`,
  ].join('\n');
}
