import { writeFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readSheetValues } from '../../src/xlsx/readSheetValues.js';
import type { StoredValue } from '../../src/sheet/cellValue.js';
import {
  conformanceCases,
  conformanceWorkbook,
  refereedCases,
  valuesFile,
} from '../checks/conformance/data.js';
import { calculatedElsewhere } from './spreadsheet.js';
import { oddCases, oddFormulas, oddValuesFile } from '../checks/conformance/oddCalls.js';

const column = (bytes: Uint8Array, count: number): StoredValue[] => {
  const rows = readSheetValues(bytes, 'Data');
  return Array.from({ length: count }, (_, i) => rows[i]?.[13] ?? null);
};

function computed(): string[] {
  const cases = conformanceCases();
  const formulas = cases.map(({ referee }) => referee);
  const [before, after] = [false, true].map((changed) =>
    column(calculatedElsewhere(conformanceWorkbook(formulas, undefined, changed)), cases.length),
  );
  return cases.map(({ formula }, i) =>
    [formula, JSON.stringify(before?.[i]), JSON.stringify(after?.[i])].join('\t'),
  );
}

it('the conformance table holds what a headless desktop spreadsheet computes', () => {
  const lines = computed();
  if (process.env['REFEREE_UPDATE']) {
    const head =
      '# formula, value, value after the changes in data.ts: computed by a headless desktop spreadsheet';
    writeFileSync(valuesFile, `${[head, ...lines].join('\n')}\n`);
  }
  const committed = refereedCases().map(({ formula, value, changed }) =>
    [formula, JSON.stringify(value), JSON.stringify(changed)].join('\t'),
  );
  expect(committed).toEqual(lines);
});

it('the table of odd arguments holds what a headless desktop spreadsheet computes', () => {
  const formulas = oddFormulas();
  const values = column(calculatedElsewhere(conformanceWorkbook(formulas)), formulas.length);
  const lines = formulas.map((formula, i) => [formula, JSON.stringify(values[i])].join('\t'));
  if (process.env['REFEREE_UPDATE']) {
    const head = '# formula, value: computed by a headless desktop spreadsheet';
    writeFileSync(oddValuesFile, `${[head, ...lines].join('\n')}\n`);
  }
  const committed = oddCases().map(({ formula, value }) => [formula, JSON.stringify(value)].join('\t'));
  expect(committed).toEqual(lines);
});
