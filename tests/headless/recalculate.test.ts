import { describe, expect, it } from 'vitest';
import { readSheetValues, recalculateWorkbook, type InputChange } from '../../src/headless';
import { buildWorkbook, formula, spilled, spilling, type BuiltSheet } from '../xlsx/support/buildWorkbook';
import { sampleFunctions } from './support/sample';

const ours = (name: string, args: string) => `_xldudf_TONROW_${name}(${args})`;

async function recalculated(
  sheets: BuiltSheet[],
  changes: InputChange[] = [],
  names: Record<string, string> = {},
) {
  const { bytes, report } = await recalculateWorkbook(buildWorkbook(sheets, { names }), sampleFunctions(), {
    changes,
  });
  const values = sheets.map(({ name }) => readSheetValues(bytes, name));
  return { bytes, report, values };
}

describe('what is calculated', () => {
  it('fills in our function and the native formulas that hang on it', async () => {
    const { values, report } = await recalculated([
      {
        name: 'Quote',
        rows: [[21, formula(ours('DOUBLE', 'A1'), 0), formula('B1+1', 1), formula('A1*3', 63)]],
      },
    ]);
    expect(values[0]).toEqual([[21, 42, 43, 63]]);
    expect(report.calculated).toBe(2);
    expect(report.stale).toEqual([]);
  });

  it('leaves a native formula alone that hangs on nothing of ours, even if its value is odd', async () => {
    const { values } = await recalculated([
      { name: 'Quote', rows: [[1, formula('A1+1', 99), formula(ours('DOUBLE', 'A1'))]] },
    ]);
    expect(values[0]).toEqual([[1, 99, 2]]);
  });

  it('computes a file without stored values whole', async () => {
    const { values } = await recalculated([{ name: 'Quote', rows: [[1, formula('A1+1'), formula('B1*2')]] }]);
    expect(values[0]).toEqual([[1, 2, 4]]);
  });

  it('follows names, tables and other sheets', async () => {
    const { values } = await recalculated(
      [
        {
          name: 'Parts list',
          rows: [
            ['Mark', "Qty [#'1]"],
            ['A', 2],
            ['B', 3],
          ],
          tables: [{ name: 'Parts', ref: 'A1:B3', columns: ['Mark', "Qty [#'1]"] }],
        },
        {
          name: 'Sum',
          rows: [
            [
              formula(ours('TOTAL', "Parts[Qty '['#''1']]")),
              formula('SUM(quantities)'),
              formula(`${ours('TOTAL', "'Parts list'!B:B")}+1`),
              formula(ours('KINDS', 'Parts[[#Headers],[#Data],[Mark]]')),
            ],
          ],
        },
      ],
      [],
      { quantities: "'Parts list'!$B$2:$B$3" },
    );
    expect(values[1]).toEqual([[5, 5, 6, 'string string string']]);
  });

  it('waits for results that come later, and for what hangs on them', async () => {
    const { values } = await recalculated([
      {
        name: 'Quote',
        rows: [[4, formula(ours('LATER', 'A1')), formula('B1+1'), formula(ours('LATER', 'C1'))]],
      },
    ]);
    expect(values[0]).toEqual([[4, 40, 41, 410]]);
  });

  it('shows errors with their sentences', async () => {
    const { values, report } = await recalculated([
      {
        name: 'Quote',
        rows: [
          [
            'abc',
            formula(ours('DOUBLE', 'A1')),
            formula(ours('MISSING', '')),
            formula('B1+1'),
            formula(ours('BROKEN', '')),
            formula(ours('CRASHES', '')),
          ],
        ],
      },
    ]);
    expect(values[0]?.[0]?.slice(1, 4)).toEqual([
      { error: '#VALUE!' },
      { error: '#N/A' },
      { error: '#VALUE!' },
    ]);
    expect(report.errors[0]).toEqual({
      cell: 'Quote!B1',
      code: '#VALUE!',
      message: "Value: 'abc' is not a number.",
    });
    expect(report.errors[1]).toEqual({ cell: 'Quote!C1', code: '#N/A', message: 'There is no such press.' });
    expect(report.errors.map(({ cell }) => cell)).toEqual([
      'Quote!B1',
      'Quote!C1',
      'Quote!D1',
      'Quote!E1',
      'Quote!F1',
    ]);
  });
});

describe('what is kept', () => {
  it('keeps a value that the engine would get wrong, and says what is stale', async () => {
    const { values, report } = await recalculated(
      [
        {
          name: 'Quote',
          rows: [[1, formula('A1+1', 3), formula(ours('DOUBLE', 'B1'), 6), formula('A1+10', 11)]],
        },
      ],
      [{ sheet: 'Quote', cell: 'A1', value: 5 }],
    );
    expect(values[0]).toEqual([[5, 3, 6, 15]]);
    expect(report.pinned).toEqual([
      { cell: 'Quote!B1', why: 'With the same inputs it comes to 2 here, but the file has 3.' },
    ]);
    expect(report.stale.map(({ cell }) => cell)).toEqual(['Quote!B1', 'Quote!C1']);
  });

  it.each([
    ['LET', '_xlfn.LET(_xlpm.x,A1,_xlpm.x+1)'],
    ['LAMBDA', '_xlfn.LAMBDA(_xlpm.x,_xlpm.x+1)(A1)'],
    ["another add-in's function", '_xldudf_OTHER_RATE(A1)'],
    ['another workbook', '[1]Rates!A1+A1'],
    ['several sheets', "SUM(Quote:'Last one'!A1)"],
    ['a crossing', 'A1:A3*2'],
    ['a volatile function', 'A1+TODAY()'],
  ])('keeps a formula with %s and reports it stale when its input changed', async (_, text) => {
    const { values, report } = await recalculated(
      [{ name: 'Quote', rows: [[1, formula(text, 77)]] }, { name: 'Last one' }],
      [{ sheet: 'Quote', cell: 'A1', value: 5 }],
    );
    expect(values[0]).toEqual([[5, 77]]);
    expect(report.stale.map(({ cell }) => cell)).toEqual(['Quote!B1']);
  });

  it('reports what depends on a spill that is read in one step', async () => {
    const { report } = await recalculated(
      [
        {
          name: 'Quote',
          rows: [['A3', formula('INDIRECT(A1)', 1)], [], [1, formula(ours('DOUBLE', 'A3'), 2)]],
        },
      ],
      [{ sheet: 'Quote', cell: 'A3', value: 5 }],
    );
    expect(report.stale.map(({ cell }) => cell)).toEqual(['Quote!B1']);
  });

  it('reports circular references and keeps their values', async () => {
    const { values, report } = await recalculated([
      { name: 'Quote', rows: [[formula(`B1+${ours('DOUBLE', '1')}`, 7), formula('A1', 8)]] },
    ]);
    expect(values[0]).toEqual([[7, 8]]);
    expect(report.stale.map(({ why }) => why)).toEqual(Array(2).fill('It is part of a circular reference.'));
  });
});

describe('spills', () => {
  it('grow, and what reads the new cells follows', async () => {
    const { values, bytes } = await recalculated(
      [
        {
          name: 'Quote',
          rows: [
            [2, spilling(ours('TALL', 'A1'), 'B1:C2', 1), spilled('row 1'), formula('SUM(B1:B9)', 3)],
            [null, spilled(2), spilled('row 2')],
          ],
        },
      ],
      [{ sheet: 'Quote', cell: 'A1', value: 4 }],
    );
    expect(values[0]).toEqual([
      [4, 1, 'row 1', 10],
      [null, 2, 'row 2'],
      [null, 3, 'row 3'],
      [null, 4, 'row 4'],
    ]);
    expect(readSheetValues(bytes, 'Quote')).toEqual(values[0]);
  });

  it('shrink, and leave blank cells', async () => {
    const { values } = await recalculated(
      [
        {
          name: 'Quote',
          rows: [
            [
              2,
              spilling(ours('TALL', 'A1'), 'B1:C2', 1),
              spilled('row 1'),
              formula('SUM(_xlfn.ANCHORARRAY(B1))', 3),
            ],
            [null, spilled(2), spilled('row 2')],
          ],
        },
      ],
      [{ sheet: 'Quote', cell: 'A1', value: 1 }],
    );
    expect(values[0]).toEqual([
      [1, 1, 'row 1', 1],
      [null, null, null],
    ]);
  });

  it('never overwrite a value that stands in the way', async () => {
    const { values, report } = await recalculated(
      [
        {
          name: 'Quote',
          rows: [
            [2, spilling(ours('TALL', 'A1'), 'B1:C2', 1), spilled('row 1')],
            [null, spilled(2), spilled('row 2')],
            [null, 'mine'],
          ],
        },
      ],
      [{ sheet: 'Quote', cell: 'A1', value: 3 }],
    );
    expect(values[0]).toEqual([
      [3, { error: '#VALUE!' }, null],
      [null, null, null],
      [null, 'mine'],
    ]);
    expect(report.errors[0]).toMatchObject({ cell: 'Quote!B1', code: '#SPILL!' });
  });
});
