import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readSheetValues, recalculateWorkbook, type InputChange } from '../../src/headless/index.js';
import {
  buildWorkbook,
  formula,
  spilled,
  spilling,
  workbookParts,
  zipParts,
  type BuiltSheet,
} from '../xlsx/support/buildWorkbook.js';
import { sampleFunctions } from './support/sample.js';
import { processorMs } from '../support/processorMs.js';

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
    const { bytes, values, report } = await recalculated(
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
    expect(strFromU8(unzipSync(bytes)['xl/workbook.xml'] as Uint8Array)).toContain(' fullCalcOnLoad="1"');
  });

  it('asks no program to calculate a file whose values are all right', async () => {
    const { bytes, report } = await recalculated([
      { name: 'Quote', rows: [[1, formula(ours('DOUBLE', 'A1'))]] },
    ]);
    expect(report.stale).toEqual([]);
    expect(strFromU8(unzipSync(bytes)['xl/workbook.xml'] as Uint8Array)).not.toContain('fullCalcOnLoad');
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

  it('reports a formula stale that finds out what it reads, when anything changed', async () => {
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

describe('references', () => {
  const parts = (rows: number) => ({
    name: 'Parts list',
    rows: [
      ['Mark', 'Qty', 'Twice', 'Sum'],
      ...Array.from({ length: rows }, (_, i) => [
        `M${i}`,
        i,
        formula(ours('DOUBLE', 'Parts[[#This Row],[Qty]]')),
        formula(`${ours('TOTAL', 'Parts[[#Headers],[#Data],[Qty]]')}+SUM(Parts[[#This Row],[Qty]:[Twice]])`),
      ]),
    ],
    tables: [{ name: 'Parts', ref: `A1:D${rows + 1}`, columns: ['Mark', 'Qty', 'Twice', 'Sum'] }],
  });

  it('to the row at hand are read in each row', async () => {
    const { values } = await recalculated([parts(3)]);
    expect(values[0]?.slice(1)).toEqual([
      ['M0', 0, 0, 3],
      ['M1', 1, 2, 6],
      ['M2', 2, 4, 9],
    ]);
  });

  it('in shared formulas move with the cell', async () => {
    const shared = (inner: string) => ({ inner: `<f t="shared" si="0"${inner}</f>` });
    const { values } = await recalculated([
      {
        name: 'Quote',
        rows: [
          [1, 10, shared(' ref="C1:C3">_xldudf_TONROW_DOUBLE(A1)+$B$1')],
          [2, null, shared('>')],
          [3, null, shared('>')],
        ],
      },
    ]);
    expect(values[0]?.map((row) => row[2])).toEqual([12, 14, 16]);
  });

  it('by a name of the sheet come before those by a name of the workbook', async () => {
    const parts = workbookParts(
      [
        { name: 'One', rows: [[1, formula('rate*2')]] },
        { name: 'Two', rows: [[5, formula('rate*2')]] },
      ],
      {
        names: { rate: 'One!$A$1' },
      },
    );
    parts['xl/workbook.xml'] = (parts['xl/workbook.xml'] as string).replace(
      '</definedNames>',
      '<definedName name="rate" localSheetId="1">Two!$A$1</definedName></definedNames>',
    );
    const { bytes } = await recalculateWorkbook(zipParts(parts), sampleFunctions());
    expect(['One', 'Two'].map((name) => readSheetValues(bytes, name)[0]?.[1])).toEqual([2, 10]);
  });

  it('in a cell of one value mean the crossing with its row', async () => {
    const { values } = await recalculated([
      {
        name: 'Quote',
        rows: [[1, formula(ours('DOUBLE', 'A1:A3'))], [2, formula(ours('DOUBLE', 'A$1:A$3'))], [3]],
      },
    ]);
    expect(values[0]?.map((row) => row[1])).toEqual([2, 4, undefined]);
  });

  it('of whole columns end where the sheet ends', async () => {
    const { values } = await recalculated([
      { name: 'Quote', rows: [[1, formula(ours('KINDS', 'A:A'))], [2]] },
    ]);
    expect(values[0]?.[0]?.[1]).toBe('number number');
  });
});

describe('what functions are given', () => {
  it('text stays text, blanks are blank, errors are errors', async () => {
    const { values } = await recalculated([
      {
        name: 'Quote',
        rows: [
          ['0012', '1e3', '=1+1', 'TRUE', null, true, 1, formula('1/0'), formula(ours('KINDS', 'A1:H1'))],
        ],
      },
    ]);
    expect(values[0]?.[0]?.[8]).toBe('string string string string null boolean number #DIV/0!');
  });

  it('texts in cells are never evaluated or changed', async () => {
    const rows = [['=1+1', '+A1', '@SUM(1)', "='x'!A1", '{=1}', formula(ours('DOUBLE', '1'))]];
    const { values } = await recalculated([{ name: 'Quote', rows }]);
    expect(values[0]).toEqual([['=1+1', '+A1', '@SUM(1)', "='x'!A1", '{=1}', 2]]);
  });
});

describe('subtotals', () => {
  const list = (hidden: string) => ({
    name: 'Quote',
    sheetData: `<row r="1"><c r="A1"><v>1</v></c><c r="B1"><f>SUBTOTAL(9,A1:A4)</f></c><c r="C1"><f>SUBTOTAL(109,A1:A4)</f></c></row><row r="2"${hidden}><c r="A2"><f>_xldudf_TONROW_DOUBLE(5)</f></c></row><row r="3"><c r="A3"><f>SUBTOTAL(109,A1:A2)</f></c></row><row r="4"><c r="A4"><v>100</v></c></row>`,
  });

  it('leave out other subtotals', async () => {
    const { values } = await recalculated([list('')]);
    expect(values[0]).toEqual([[1, 111, 111], [10], [11], [100]]);
  });

  it('leave out hidden rows where they say so, and are not evaluated where that is open', async () => {
    const { values, report } = await recalculated([list(' hidden="1"')]);
    expect(values[0]?.[0]).toEqual([1, null, 101]);
    expect(report.stale[0]).toEqual({ cell: 'Quote!B1', why: 'It uses SUBTOTAL over hidden rows.' });
  });
});

describe('large and hostile sheets', () => {
  it('ten thousand running totals over our function take linear space and a few seconds', async () => {
    const rows = Array.from({ length: 10_000 }, (_, i) => [
      i,
      formula(ours('DOUBLE', `A${i + 1}`)),
      formula(`SUM(B$1:B${i + 1})`),
    ]);
    const spent = await processorMs(async () => {
      const { values } = await recalculated([{ name: 'Quote', rows }]);
      expect(values[0]?.[9999]).toEqual([9999, 19998, 99_990_000]);
    });
    expect(spent).toBeLessThan(20_000);
  });

  it('ten thousand rows of twelve columns, six of them ours, take seconds', async () => {
    const row = (i: number) => {
      const r = i + 2;
      const own = ['B', 'C', 'D', 'E', 'F', 'G'].map((column) =>
        formula(ours('DOUBLE', `$A${r}+COLUMN(${column}1)`), 0),
      );
      const native = [
        formula(`SUM(B${r}:G${r})`),
        formula(`ROUND(H${r}/3,2)`),
        formula(`IF(I${r}>5,"hi","lo")`),
        formula(`COUNTIF(A$2:A$10001,A${r})`),
        formula(`H${r}&" t"`),
      ];
      return [i, ...own, ...native];
    };
    const rows = [['Mark'], ...Array.from({ length: 10_000 }, (_, i) => row(i))];
    const spent = await processorMs(async () => {
      const { values, report } = await recalculated([{ name: 'Quote', rows }]);
      expect(report.calculated).toBe(110_000);
      expect(values[0]?.[10_000]?.slice(6)).toEqual([20_012, 120_042, 40_014, 'hi', 1, '120042 t']);
    });
    expect(spent).toBeLessThan(20_000);
  });

  it('a chain of ten thousand cells, written from the last to the first, is followed', async () => {
    const rows = Array.from({ length: 10_000 }, (_, i) => [
      formula(i === 9999 ? ours('DOUBLE', '1') : `A${i + 2}+1`),
    ]);
    const { values } = await recalculated([{ name: 'Quote', rows }]);
    expect(values[0]?.[0]).toEqual([10_001]);
  });

  it('texts that double, arrays that multiply and searches that explode end early', async () => {
    const doubling = Array.from({ length: 60 }, (_, i) => [formula(i === 0 ? '"ab"' : `A${i}&A${i}`)]);
    const sheets = [
      { name: 'Quote', rows: doubling },
      {
        name: 'Wide',
        rows: [
          [
            formula('SUMPRODUCT(A2:A1000000*B2:XFC2)'),
            formula('SUMPRODUCT(ROUND(A2:A1000000,B2:XFC2))'),
            formula(`COUNTIF(A2:A9,"${'*a'.repeat(30)}b")`),
            formula(`REPT("${'x'.repeat(1000)}",99)`),
          ],
          ['a'.repeat(30_000)],
        ],
      },
    ];
    const spent = await processorMs(async () => {
      const { values, report } = await recalculated(sheets);
      expect(values[0]?.slice(14).flat()).toEqual([
        'ab'.repeat(2 ** 14).length > 32_767 ? { error: '#VALUE!' } : 'ab'.repeat(2 ** 14),
        ...Array<unknown>(45).fill({ error: '#VALUE!' }),
      ]);
      expect(values[1]?.[0]).toEqual([null, null, null, { error: '#VALUE!' }]);
      expect(report.stale.map(({ why }) => why)).toEqual([
        'It takes more work than is done here for one formula.',
        'It makes an array of more than four million values.',
        'It searches with more than three wildcards.',
      ]);
    });
    expect(spent).toBeLessThan(10_000);
  });

  it('a native formula that would fill several cells is not squeezed into one', async () => {
    const { values, report } = await recalculated([
      { name: 'Quote', rows: [[1, formula('INDEX(A1:A2,0,1)')], [2]] },
    ]);
    expect(values[0]?.[0]).toEqual([1, null]);
    expect(report.stale[0]?.why).toBe('It gives several values in a cell that holds one.');
  });

  it('an array formula over the whole sheet, nested brackets and endless names are kept, not followed', async () => {
    const names = { a: 'b+1', b: 'a+1' };
    const rows = [
      [{ inner: '<f t="array" ref="A1:XFD1048576">_xldudf_TONROW_DOUBLE(1)</f><v>5</v>' }],
      [
        undefined,
        formula(`${'('.repeat(5000)}1${')'.repeat(5000)}+B9`, 1),
        formula('a', 2),
        formula(`${'-'.repeat(9000)}B9`, 3),
      ],
    ];
    const { values, report } = await recalculated([{ name: 'Quote', rows }], [], names);
    expect(values[0]?.[0]).toEqual([5]);
    expect(report.stale[0]?.why).toBe('It fills more than a million cells.');
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

  it('move when what they read spills further', async () => {
    const { values } = await recalculated([
      {
        name: 'Quote',
        rows: [
          [
            3,
            spilling(ours('TALL', 'A1'), 'B1'),
            undefined,
            undefined,
            spilling(`${ours('TOTAL', 'B1:B9')}*INDEX(_xlfn.ANCHORARRAY(B1),0,1)`, 'E1'),
          ],
        ],
      },
    ]);
    expect(values[0]?.map((row) => row[4])).toEqual([6, 12, 18]);
  });

  it('into merged cells or beyond the sheet are blocked', async () => {
    const merged = await recalculated([
      {
        name: 'Quote',
        rows: [[2, spilling(ours('TALL', 'A1'), 'B1')]],
        after: '<mergeCells><mergeCell ref="C2:D3"/></mergeCells>',
      },
    ]);
    expect(merged.report.errors[0]).toEqual({
      cell: 'Quote!B1',
      code: '#SPILL!',
      message: 'The result would reach into merged cells.',
    });
    const sheetData = `<row r="1048576"><c r="A1048576" cm="1"><f t="array" ref="A1048576">${ours('TALL', '2')}</f></c></row>`;
    const { report } = await recalculateWorkbook(
      buildWorkbook([{ name: 'Quote', sheetData }]),
      sampleFunctions(),
    );
    expect(report.errors[0]).toMatchObject({
      code: '#SPILL!',
      message: 'The result would reach beyond the end of the sheet.',
    });
  });

  it('of fixed arrays fill their range: what is missing is #N/A, a single value repeats', async () => {
    const array = (text: string, ref: string) => ({ inner: `<f t="array" ref="${ref}">${text}</f>` });
    const { values } = await recalculated([
      { name: 'Quote', rows: [[array(ours('TALL', '2'), 'A1:A3'), array(ours('DOUBLE', '4'), 'B1:B2')]] },
    ]);
    expect(values[0]).toEqual([[1, 8], [2, 8], [{ error: '#N/A' }]]);
  });
});
