import { describe, expect, it } from 'vitest';
import { calculateWorkbook } from '../../src/headless/recalculate/calculate.js';
import { nodeCodec } from '../../src/headless/files/nodeCodec.js';
import { openWorkbook } from '../../src/xlsx/workbook.js';
import { sampleFunctions } from './support/sample.js';
import { cell, SharedStrings, workbook } from '../../scripts/bench/package.mjs';

/** `ROWS=250000 npx vitest run tests/headless/workPerRow` tries more. */
const sizes = [1_000, 4_000, Number(process.env['ROWS'] ?? 16_000)];

/** Rows with numbers, some of our functions and some native ones, and one that spills down beside them all. */
function book(rows: number, inRow: (row: number) => string[], first: string): Uint8Array {
  const strings = new SharedStrings();
  const lines = Array.from({ length: rows }, (_, at) => {
    const row = at + 1;
    const formulas = inRow(row).map((formula) => ({ formula }));
    const contents = [at / 7, `Mark ${row}`, ...formulas];
    const cells = contents.map((content, column) => cell(`${'ABCDEFG'[column]}${row}`, content, strings));
    const spill = row === 1 && first !== '' ? cell('H1', { formula: first, array: true }, strings) : '';
    return `<row r="${row}">${cells.join('')}${spill}</row>`;
  });
  return workbook([{ name: 'Parts', rows: lines }], strings);
}

/** What was counted while a book was calculated: texts read, steps of work, calls of our functions. */
async function counted(bytes: Uint8Array) {
  const functions = sampleFunctions();
  let calls = 0;
  for (const one of functions.byName.values()) {
    const { call } = one;
    one.call = (...args) => {
      calls++;
      return call(...args);
    };
  }
  const { parses, evaluator, calculated, stale } = await calculateWorkbook(
    openWorkbook(bytes, nodeCodec),
    functions,
    [],
  );
  expect(stale.size).toBe(0);
  return { parses, calls, steps: evaluator.work.spent, calculated: calculated.size };
}

const ours = (name: string) => `_xldudf_TONROW_${name}`;

describe('the work of a row is the same however many there are', () => {
  it('of formulas beside each other: each form is read once, each function called once, as many steps a row', async () => {
    const inRow = (row: number) => [
      `${ours('DOUBLE')}(A${row})`,
      `${ours('ADDUP')}(A${row},C${row})`,
      `C${row}+D${row}&B${row}`,
    ];
    const stepsPerRow = new Set<number>();
    for (const rows of sizes) {
      const { parses, calls, steps, calculated } = await counted(book(rows, inRow, ''));
      expect({ parses, calls, calculated }).toEqual({ parses: 3, calls: 2 * rows, calculated: 3 * rows });
      stepsPerRow.add(steps / rows);
    }
    expect(stepsPerRow.size).toBe(1);
  });

  it('of a result that spills farther than the file knows: it is worked out once, and what hangs on it', async () => {
    const stepsPerRow: number[] = [];
    for (const rows of sizes) {
      const inRow = (row: number) => [`${ours('DOUBLE')}(A${row})`, `H${row}*2`];
      const { parses, calls, steps } = await counted(book(rows, inRow, `${ours('TALL')}(${rows},1)`));
      expect({ parses, calls }).toEqual({ parses: 3, calls: rows + 1 });
      stepsPerRow.push(steps / rows);
    }
    expect(Math.max(...stepsPerRow) / Math.min(...stepsPerRow)).toBeLessThan(1.01);
  });
});
