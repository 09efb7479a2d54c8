import { describe, expect, it } from 'vitest';
import {
  readSheetValues,
  recalculateWorkbook,
  type CellValue,
  type RecalcReport,
} from '../../src/headless/index.js';
import { supportedFunctions } from '../../src/headless/engine/supportedFunctions.js';
import { isCellError } from '../../src/sheet/cellValue.js';
import { sampleFunctions } from '../headless/support/sample.js';
import { changes, conformanceCases, conformanceWorkbook, refereedCases } from './conformance/data.js';

/*
 * Outside truth: values.tsv, computed by a headless desktop spreadsheet (LibreOffice), see tests/referee.
 * It prints 15 digits, hence the relative tolerance of 1e-12; RATE, found by
 * repeated improvement, is held to 1e-9.
 */

const cases = refereedCases();
const formulas = cases.map(({ formula }) => formula);

function expectSame(formula: string, actual: CellValue, expected: CellValue): void {
  if (typeof expected === 'number' && typeof actual === 'number') {
    const scale = Math.max(Math.abs(expected), 1e-9);
    expect(Math.abs(actual - expected) / scale, `${formula}: ${actual}, not ${expected}`).toBeLessThan(
      formula.startsWith('RATE') ? 1e-9 : 1e-12,
    );
  } else if (isCellError(expected)) {
    expect(actual, formula).toMatchObject({ error: expected.error });
  } else expect(actual, formula).toEqual(expected);
}

const cellOf = (i: number) => `Data!N${i + 1}`;
const results = (bytes: Uint8Array) => readSheetValues(bytes, 'Data').map((row) => row[13] ?? null);
const kept = (report: RecalcReport) => new Set(report.stale.map(({ cell }) => cell));
const functionsIn = (formula: string) =>
  [...formula.matchAll(/([A-Z][A-Z0-9.]*)\(/g)].map(([, name]) => name as string);

describe('the conformance table', () => {
  it('has values for every formula', () => {
    expect(formulas).toEqual(conformanceCases().map(({ formula }) => formula));
    expect(formulas.length).toBeGreaterThan(300);
  });

  it('has every function that is evaluated', () => {
    const tested = new Set(formulas.flatMap(functionsIn));
    expect([...supportedFunctions].filter((name) => !tested.has(name))).toEqual([]);
  });
});

describe('a workbook without stored values', () => {
  it.each([
    ['as given', false],
    ['after the changes', true],
  ])('is computed as the desktop spreadsheet does, %s', async (_, changed) => {
    const { bytes, report } = await recalculateWorkbook(
      conformanceWorkbook(formulas, undefined, changed),
      sampleFunctions(),
    );
    const [values, left] = [results(bytes), kept(report)];
    let compared = 0;
    cases.forEach(({ formula, value, changed: after }, i) => {
      if (left.has(cellOf(i))) return expect(values[i], formula).toBeNull();
      compared++;
      expectSame(formula, values[i] ?? null, changed ? after : value);
    });
    expect(compared).toBeGreaterThan(310);
  });

  it('leaves out only functions that are not on the list, numbers they do not take, and searches with wildcards', async () => {
    const { report } = await recalculateWorkbook(conformanceWorkbook(formulas), sampleFunctions());
    const left = kept(report);
    const listed = cases.filter(
      ({ formula }, i) =>
        left.has(cellOf(i)) && functionsIn(formula).every((name) => supportedFunctions.has(name)),
    );
    expect(listed.map(({ formula }) => formula)).toEqual([
      'LARGE(B2:B13,99)',
      'SQRT(-1)',
      'SEARCH("?c","abc")',
    ]);
  });
});

describe('a workbook with the values a desktop spreadsheet stored', () => {
  const stored = conformanceWorkbook(
    formulas,
    cases.map(({ value }) => value),
  );

  it('comes back without a value changed when nothing of ours is in it', async () => {
    const { bytes } = await recalculateWorkbook(stored, sampleFunctions());
    expect(bytes).toEqual(stored);
  });

  it('has no wrong value after inputs changed: new values are right, the rest is reported', async () => {
    const inputs = changes.map((change) => ({ sheet: 'Data', ...change }));
    const { bytes, report } = await recalculateWorkbook(stored, sampleFunctions(), { changes: inputs });
    const [values, left] = [results(bytes), kept(report)];
    let compared = 0;
    cases.forEach(({ formula, value, changed }, i) => {
      if (left.has(cellOf(i))) return expectSame(formula, values[i] ?? null, value);
      compared++;
      expectSame(formula, values[i] ?? null, changed);
    });
    expect(compared).toBeGreaterThan(310);
    // Nothing that is evaluated disagreed with the stored values.
    expect(report.pinned.filter(({ why }) => why.startsWith('With the same inputs'))).toEqual([]);
  });
});
