import { describe, expect, it } from 'vitest';
import { readSheetValues, recalculateWorkbook } from '../../src/headless/index.js';
import { isCellError, type StoredValue } from '../../src/sheet/cellValue.js';
import { sampleFunctions } from '../headless/support/sample.js';
import { conformanceWorkbook } from './conformance/data.js';
import { differences } from './conformance/differences.js';
import { oddCases, oddFormulas } from './conformance/oddCalls.js';

/*
 * Outside truth: oddValues.tsv, computed by a headless desktop spreadsheet (LibreOffice), see tests/referee. Where the
 * documentation or the standard of the file format decides against it, differences.ts says so.
 */

const cases = oddCases();
const decided = new Map(differences.flatMap(({ values }) => Object.entries(values)));

function isSame(actual: StoredValue, expected: StoredValue): boolean {
  if (typeof actual === 'number' && typeof expected === 'number')
    return Math.abs(actual - expected) <= 1e-9 * Math.max(1, Math.abs(expected));
  if (isCellError(actual) && isCellError(expected)) return actual.error === expected.error;
  return actual === expected;
}

describe('every function with an odd argument in each place', () => {
  it('has the referee’s value for each call', () => {
    expect(cases.map(({ formula }) => formula)).toEqual(oddFormulas());
    expect(cases.length).toBeGreaterThan(2000);
  });

  it('gives that value, or is left alone and told', async () => {
    const source = conformanceWorkbook(cases.map(({ formula }) => formula));
    const { bytes, report } = await recalculateWorkbook(source, sampleFunctions());
    const left = new Set(report.stale.map(({ cell }) => cell));
    const values = readSheetValues(bytes, 'Data').map((row) => row[13] ?? null);
    const evaluated = cases.flatMap(({ formula, value }, at) =>
      left.has(`Data!N${at + 1}`) ? [] : [{ formula, ours: values[at] ?? null, referee: value }],
    );
    const wrong = evaluated.filter(
      ({ formula, ours, referee }) => !isSame(ours, decided.get(formula) ?? referee),
    );
    expect(wrong).toEqual([]);
    expect(evaluated.length).toBeGreaterThan(1700);
    // A difference is listed only where it is one.
    const really = evaluated.filter(({ ours, referee }) => !isSame(ours, referee));
    expect(really.map(({ formula }) => formula).sort()).toEqual([...decided.keys()].sort());
  });
});
