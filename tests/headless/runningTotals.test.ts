import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newSearchCaches, NativeFunctions } from '../../src/headless/engine/engine.js';
import { RunningTotals } from '../../src/headless/engine/runningTotals.js';
import { OurError, type Scalar, type Values } from '../../src/headless/engine/values.js';
import { Work } from '../../src/headless/engine/work.js';
import { calculateWorkbook } from '../../src/headless/recalculate/calculate.js';
import { nodeCodec } from '../../src/headless/files/nodeCodec.js';
import type { Node } from '../../src/sheet/formula/nodes.js';
import { openWorkbook } from '../../src/xlsx/workbook.js';
import { cell, SharedStrings, workbook } from '../../scripts/bench/package.mjs';
import { sampleFunctions } from './support/sample.js';

const names = ['SUM', 'COUNT', 'COUNTA', 'MAX', 'MIN'] as const;

/** What a cell may hold; numbers of very different sizes, so that the order of adding shows in the last bits. */
const scalar: fc.Arbitrary<Scalar> = fc.oneof(
  { weight: 12, arbitrary: fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => ({ value })) },
  { weight: 12, arbitrary: fc.integer({ min: -999, max: 999 }).map((tenths) => ({ value: tenths / 10 })) },
  { weight: 3, arbitrary: fc.constantFrom<Scalar>({ value: null }, { value: true }, { value: -0 }) },
  { weight: 3, arbitrary: fc.constantFrom<Scalar>({ value: '' }, { value: '12' }, { value: 'PL 3/8' }) },
  {
    weight: 1,
    arbitrary: fc.constantFrom<Scalar>({ value: '#DIV/0!' }, new OurError('#VALUE!', 'No such grade.')),
  },
);

/** Columns of cells, and the rows that totals are asked down to, in any order. */
const table = fc
  .tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 30 }))
  .chain(([width, height]) =>
    fc.record({
      columns: fc.array(fc.array(scalar, { minLength: height, maxLength: height }), {
        minLength: width,
        maxLength: width,
      }),
      ends: fc.array(fc.nat(height - 1), { minLength: 1, maxLength: 12 }),
    }),
  );

const valuesOf = (columns: readonly Scalar[][]): Values => ({
  range: (_, { top, bottom, left, right }) =>
    columns.slice(left, right + 1).map((column) => column.slice(top, bottom + 1)),
  cell: (_, row, column) => columns[column]?.[row] ?? { value: null },
  spillZone: (_, row, column) => ({ top: row, bottom: row, left: column, right: column }),
  isHidden: () => false,
  isSubtotal: () => false,
});

const setting = (down: number) => ({
  ...{ sheet: 0, row: down, column: 9, plain: true, ours: false },
  away: { down, right: 0 },
});

/** `A$1:A1` of the cell it was read for. */
const growing = (right: number): Node => ({
  kind: 'reference',
  sheet: 0,
  zone: { top: 0, bottom: 0, left: 0, right },
  moves: { top: false, bottom: true, left: false, right: false },
});

const someWork = () => {
  const work = new Work(1000);
  work.begin();
  return work;
};

describe('a running total', () => {
  it('has the value, to the last bit, that the engine gives for the whole range', async () => {
    const native = new NativeFunctions();
    await native.loadFor([{ functions: new Set(['SUM']) }]);
    fc.assert(
      fc.property(table, fc.constantFrom(...names), ({ columns, ends }, name) => {
        const values = valuesOf(columns);
        const totals = new RunningTotals(values, someWork());
        for (const bottom of ends) {
          const zone = { top: 0, bottom, left: 0, right: columns.length - 1 };
          const whole = native.engine.call(name, [values.range(0, zone)], newSearchCaches(), someWork());
          expect(totals.call(name, [growing(columns.length - 1)], setting(bottom))).toEqual(whole);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('is no other call: one of a range that keeps its size, of two ranges, of another function', () => {
    const totals = new RunningTotals(valuesOf([[{ value: 1 }, { value: 2 }]]), someWork());
    const moving = { top: true, bottom: true, left: false, right: false };
    expect(totals.call('SUM', [{ ...growing(0), moves: moving } as Node], setting(1))).toBeUndefined();
    expect(totals.call('SUM', [growing(0), growing(0)], setting(1))).toBeUndefined();
    expect(totals.call('MEDIAN', [growing(0)], setting(1))).toBeUndefined();
    expect(totals.call('SUM', [growing(0)], setting(1))).toEqual({ value: 3 });
  });
});

describe('the work of a running total', () => {
  /** Rows with a number and a total of each kind down to them, and a total of the totals. */
  function book(rows: number): Uint8Array {
    const strings = new SharedStrings();
    const lines = Array.from({ length: rows }, (_, at) => {
      const row = at + 1;
      const formulas = [...names.map((name) => `${name}(A$1:A${row})`), `SUM(B$1:C${row})-SUM(B$1:B${row})`];
      const contents = [at / 7, ...formulas.map((formula) => ({ formula }))];
      const cells = contents.map((content, column) => cell(`${'ABCDEFG'[column]}${row}`, content, strings));
      return `<row r="${row}">${cells.join('')}</row>`;
    });
    return workbook([{ name: 'Parts', rows: lines }], strings);
  }

  it('is the same for each row, however many there are', async () => {
    const stepsPerRow = new Set<number>();
    for (const rows of [1_000, 4_000, 16_000]) {
      const { evaluator, calculated, stale, grids } = await calculateWorkbook(
        openWorkbook(book(rows), nodeCodec),
        sampleFunctions(),
        [],
      );
      expect([calculated.size, stale.size]).toEqual([6 * rows, 0]);
      let sum = 0;
      for (let at = 0; at < rows; at++) sum += at / 7;
      const last = [1, 2, 3, 4, 5].map((column) => grids[0]?.value(rows - 1, column));
      expect(last).toEqual([sum, rows, rows, (rows - 1) / 7, 0]);
      stepsPerRow.add(Math.round(evaluator.work.spent / rows));
    }
    expect(stepsPerRow.size).toBe(1);
  });
});
