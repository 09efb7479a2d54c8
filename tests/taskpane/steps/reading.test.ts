import { describe, expect, it } from 'vitest';
import { callArgument } from '../../../src/taskpane/steps/callArgument.js';
import { callsUs } from '../../../src/sheet/formula/ourCalls.js';
import { formulaCall } from '../../../src/sheet/formula/formulaCall.js';
import { readSubject } from '../../../src/taskpane/steps/readSubject.js';
import { structuredArea } from '../../../src/taskpane/steps/structuredReference.js';
import type { Table } from '../../../src/workbook/reading.js';
import { cell, listRow, partHeadings, parts, quoteBook, verdictColumn } from './quoteBook.js';
import { processorMs } from '../../support/processorMs.js';

describe('a call in a formula', () => {
  it.each([
    ['=TONROW.PUNCHFORCE(A1,"3/8",A3)', 'PUNCHFORCE', ['A1', '"3/8"', 'A3']],
    ['=_xldudf_TONROW_HOLEMIN(A1,"a,b",{1,2;3,4})', 'HOLEMIN', ['A1', '"a,b"', '{1,2;3,4}']],
    ['=+tonrow.shop()', 'SHOP', []],
    [
      "=TONROW.SHEARFORCE('My, sheet'!A1,,Parts[[#Headers],[it''s]])",
      'SHEARFORCE',
      ["'My, sheet'!A1", '', "Parts[[#Headers],[it''s]]"],
    ],
    ['=TONROW.LENGTH("say ""1, 2""")', 'LENGTH', ['"say ""1, 2"""']],
  ])('%s is read', (formula, name, given) => {
    expect(formulaCall(formula)).toEqual({ name, arguments: given });
  });

  it.each([
    '=TONROW.PUNCHFORCE(A1)*2',
    '=2*TONROW.HOLEMIN(A1)',
    '=TONROW.A(1)+TONROW.B(2)',
    '=SUM(A1)',
    'TONROW.A(1)',
  ])('%s is more than one call, or none', (formula) => {
    expect(formulaCall(formula)).toBeUndefined();
  });

  it.each([
    ['=2*TONROW.HOLEMIN(A1)', true],
    ['=_xldudf_TONROW_HOLEMIN(A1)', true],
    ['="TONROW.HOLEMIN("&A1', false],
    ['=SUM(A1)', false],
  ])('%s calls us: %s', (formula, calls) => {
    expect(callsUs(formula)).toBe(calls);
  });

  it('ends in reasonable time on a long formula without an end', async () => {
    const spent = await processorMs(() => {
      formulaCall(`=TONROW.A(${'('.repeat(8000)}`);
      formulaCall(`=TONROW.A({${'"",'.repeat(3000)}`);
    });
    expect(spent).toBeLessThan(500);
  });
});

const table: Table = {
  name: 'Parts',
  area: { sheet: 'Quote', row: 4, column: 1, rows: 6, columns: 4 },
  headings: ['Mark', 'Hole', "it's [#]", 'Press'],
  hasTotals: true,
};
const here = cell('Quote', 7, 2);
const area = (row: number, rows: number, column: number, columns: number) => ({
  sheet: 'Quote',
  row,
  rows,
  column,
  columns,
});

describe('a reference to a table', () => {
  it.each([
    ['Parts[[#Headers],[Mark]:[Press]]', area(4, 1, 1, 4)],
    ['Parts[@[Mark]:[Hole]]', area(7, 1, 1, 2)],
    ['Parts[[#This Row],[Hole]]', area(7, 1, 2, 1)],
    ['[@Hole]', area(7, 1, 2, 1)],
    ['parts[hole]', area(5, 4, 2, 1)],
    ['Parts[]', area(5, 4, 1, 4)],
    ['Parts[#All]', area(4, 6, 1, 4)],
    ['Parts[[#Headers],[#Data]]', area(4, 5, 1, 4)],
    ["Parts[it''s '['#']]", area(5, 4, 3, 1)],
    ['Parts[[Press]:[Mark]]', area(5, 4, 1, 4)],
  ])('%s is those cells', (text, cells) => {
    expect(structuredArea(text, here, [table])).toEqual(cells);
  });

  it.each(['Other[Hole]', 'Parts[Nothing]', 'Parts[#Nonsense]', 'A1', 'Parts[[Mark]'])(
    '%s is none',
    (text) => {
      expect(structuredArea(text, here, [table])).toBeUndefined();
    },
  );

  it('has no row of this table outside of it', () => {
    expect(structuredArea('Parts[@Hole]', cell('Quote', 99, 2), [table])).toBeUndefined();
    expect(structuredArea('[@Hole]', cell('Other', 7, 2), [table])).toBeUndefined();
  });
});

describe('an argument', () => {
  it.each([
    ['', [[null]]],
    ['-1.5e3', [[-1500]]],
    ['50%', [[0.5]]],
    ['TRUE', [[true]]],
    ['"3/8"""', [['3/8"']]],
    [
      '{"Mark",1;"a;b",FALSE}',
      [
        ['Mark', 1],
        ['a;b', false],
      ],
    ],
  ])('%s is a constant', (text, values) => {
    expect(callArgument(text, here, [table])).toEqual({ kind: 'values', values });
  });

  it.each([
    ['$b$2:c3', { sheet: 'Quote', row: 1, column: 1, rows: 2, columns: 2 }],
    ["'It''s'!A1", cell("It's", 0, 0)],
    ['Parts', { table: 'Parts', part: 'data' }],
    ['ShopStamp', { name: 'ShopStamp' }],
  ])('%s is a place', (text, place) => {
    expect(callArgument(text, here, [table])).toEqual({ kind: 'place', place });
  });

  it.each(['A1*2', 'LEFT(A1,3)', 'A1&"x"', '{A1}'])('%s is a calculation', (text) => {
    expect(callArgument(text, here, [table])).toEqual({ kind: 'calculation', text });
  });
});

describe('what the selected cell is about', () => {
  const subjectAt = (sheet: string, row: number, column: number) => {
    const book = quoteBook();
    book.selected = [cell(sheet, row, column)];
    return readSubject(book);
  };

  it('is the row of the list, from the formula of its verdict and from any of its cells', async () => {
    const wanted = { kind: 'row', cells: expect.arrayContaining(['A1', 'L3x3x1/4']) as unknown };
    expect(await subjectAt('Quote', listRow + 2, verdictColumn)).toMatchObject({
      ...wanted,
      headings: partHeadings,
    });
    expect(await subjectAt('Quote', listRow + 2, 2)).toMatchObject(wanted);
  });

  it('is the row behind a spilled result of the list', async () => {
    const subject = await subjectAt('List check', 4, 1);
    expect(subject).toMatchObject({ kind: 'row', cells: parts[1], headings: partHeadings });
  });

  it('is a call with its values and where they stand', async () => {
    expect(await subjectAt('Quote', 12, 4)).toMatchObject({
      kind: 'call',
      name: 'PUNCHFORCE',
      arguments: [
        { written: 'B13', values: [['13/16']], area: cell('Quote', 12, 1) },
        { written: 'C13', values: [['3/8']] },
        { written: 'D13', values: [['A36']] },
        { written: 'ShopStamp', area: cell('Shop', 3, 1) },
      ],
    });
  });

  it.each([
    ['=TONROW.PUNCHFORCE(B13,C13,D13)*2', 'does more than call one function'],
    ['=TONROW.PUNCHFORCE(B13&"",C13,D13)', 'The argument B13&"" is a calculation'],
  ])('is not clear for %s, with what to do', async (formula, sentence) => {
    const book = quoteBook();
    book.type('Quote', 20, 0, [[{ formula }]]);
    book.selected = [cell('Quote', 20, 0)];
    expect(await readSubject(book)).toMatchObject({
      kind: 'unclear',
      message: expect.stringContaining(sentence) as unknown,
    });
  });

  it('is not clear for the formula of a whole list', async () => {
    expect(await subjectAt('List check', 2, 0)).toMatchObject({ kind: 'unclear' });
  });

  it('is nothing for other cells, headings, and no selection', async () => {
    for (const [sheet, row, column] of [
      ['Quote', 40, 3],
      ['Quote', listRow, 1],
      ['Shop', 8, 1],
    ] as const)
      expect(await subjectAt(sheet, row, column)).toEqual({ kind: 'nothing' });
    expect(await readSubject(quoteBook())).toEqual({ kind: 'nothing' });
  });
});
