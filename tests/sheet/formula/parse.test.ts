import { describe, expect, it } from 'vitest';
import { tokenize } from '../../../src/sheet/formula/tokens.js';
import { parseFormula } from '../../../src/sheet/formula/parse.js';
import { workbookScope } from '../../../src/sheet/formula/scope.js';
import { readCorner, zoneBetween } from '../../../src/sheet/formula/corner.js';
import { zoneAddress } from '../../../src/sheet/address.js';

const still = { rows: 0, columns: 0 };
const scope = workbookScope(
  {
    sheets: [{ name: 'Quote' }, { name: "Bob's list" }, { name: 'Last' }],
    tables: [],
    names: [{ name: 'rate', text: 'Quote!$A$1', sheet: undefined }],
  },
  'TONROW',
  new Set(['DOUBLE']),
);

const parsed = (text: string, shift = still) =>
  parseFormula(text, { sheet: 0, row: 4, column: 3, shift }, scope);
const references = (text: string, shift = still) =>
  parsed(text, shift).references.map(({ sheet, zone }) => `${sheet}!${zoneAddress(zone)}`);

describe('words of a formula', () => {
  it.each([
    ['A1', { row: 0, column: 0, movesRow: true, movesColumn: true }],
    ['$XFD$1048576', { row: 1_048_575, column: 16_383, movesRow: false, movesColumn: false }],
    ['b$7', { row: 6, column: 1, movesRow: false, movesColumn: true }],
    ['$AB12', { row: 11, column: 27, movesRow: true, movesColumn: false }],
    ['C', { row: undefined, column: 2, movesRow: false, movesColumn: true }],
    ['$C', { row: undefined, column: 2, movesRow: false, movesColumn: false }],
    ['12', { row: 11, column: undefined, movesRow: true, movesColumn: false }],
    ['$12', { row: 11, column: undefined, movesRow: false, movesColumn: false }],
  ])('%s is a corner', (word, corner) => {
    expect(readCorner(word, still)).toEqual(corner);
  });

  it.each(['', '$', 'ABCD1', 'A$', 'A1B', '$A$B', 'rate', 'A12345678', 'A.1', 'Ä1'])('%j is none', (word) => {
    expect(readCorner(word, still)).toBeUndefined();
  });

  it('beyond the sheet there is no zone', () => {
    const corner = readCorner('ZZZ1', still);
    expect(corner && zoneBetween(corner, corner)).toBeUndefined();
  });

  it.each([
    ['A1+B2', ['word:A1', 'operator:+', 'word:B2']],
    ['SUM(1,2.5e3)', ['function:SUM', 'open:(', 'number:1', 'separator:,', 'number:2.5e3', 'close:)']],
    ['1:3', ['word:1', 'operator::', 'number:3']],
    ['"a ""b"""&#N/A', ['text:"a ""b"""', 'operator:&', 'error:#N/A']],
    ["'Bob''s list'!A1", ["sheet:'Bob''s list'!", 'word:A1']],
    ['[1]Rates!A1', ['sheet:[1]Rates!', 'word:A1']],
    ["Parts[[#Headers],[Hole '[a'']]", ['word:Parts', "bracket:[[#Headers],[Hole '[a'']]"]],
    ['A2#', ['word:A2', 'operator:#']],
    [
      '{1,-2;"x",TRUE}',
      [
        'openArray:{',
        'number:1',
        'separator:,',
        'operator:-',
        'number:2',
        'rowSeparator:;',
        'text:"x"',
        'separator:,',
        'word:TRUE',
        'closeArray:}',
      ],
    ],
  ])('%s splits into its tokens', (text, tokens) => {
    expect(
      tokenize(text)
        .slice(0, -1)
        .map(({ kind, text: whole }) => `${kind}:${whole}`),
    ).toEqual(tokens);
  });
});

describe('what a formula reads', () => {
  it.each([
    ['A1+$B$2', ['0!A1', '0!B2']],
    ['SUM(B2:A1)', ['0!A1:B2']],
    ["'bob''s LIST'!C3:D4", ['1!C3:D4']],
    ['Last!B:B', ['2!B1:B1048576']],
    ['3:$5', ['0!A3:XFD5']],
    ['rate*2', ['0!A1']],
    ['SUM(Quote:Last!B2)', ['0!B2', '1!B2', '2!B2']],
    ['_xlfn.LET(_xlpm.x,A1,_xlpm.x*B1)', ['0!A1', '0!B1']],
    ['SUM((A1,B2))', ['0!A1', '0!B2']],
    ['A1:A3 B1:B3', ['0!A1:A3', '0!B1:B3']],
    ['[1]Rates!$A$1+C1', ['0!C1']],
  ])('%s', (text, expected) => {
    expect(references(text)).toEqual(expected);
  });

  it('moves with the cell where it is relative', () => {
    expect(references('A1+$A1+A$1+$A$1', { rows: 2, columns: 1 })).toEqual(['0!B3', '0!A3', '0!B1', '0!A1']);
  });

  it('off the sheet it is an error, not another cell', () => {
    expect(parsed('A1', { rows: -1, columns: 0 }).node).toEqual({ kind: 'error', code: '#REF!' });
  });
});

describe('what is not evaluated is said', () => {
  it.each([
    ['[1]Rates!A1', 'It reads another workbook.'],
    ["'C:\\quotes\\[Rates.xlsx]Sheet1'!A1", 'It reads another workbook.'],
    ['SUM(Quote:Last!B2)', 'It reads one reference across several sheets.'],
    ['SUM((A1,B2))', 'It uses several areas as one reference, which is not evaluated here.'],
    ['A1:A3 B1:B3', 'It uses the crossing of two ranges, which is not evaluated here.'],
    ['Nope!A1', 'It names the sheet "Nope", which the workbook lacks.'],
    ['TONROW.NOPE(1)', 'It uses TONROW.NOPE, which this edition of TONROW does not have.'],
    ['Nope[Qty]', 'It names a table that the workbook lacks.'],
    ['1+', 'The formula ends too early.'],
    ['1+*2', 'The formula cannot be read at "*".'],
    ['A1;B1', 'The formula cannot be read at ";".'],
  ])('%s', (text, why) => {
    expect(parsed(text).unsupported).toBe(why);
  });

  it.each(['INDIRECT("A1")', 'OFFSET(A1,1,0)', 'A1:INDEX(B1:B9,2)', '1+'])('%s may read anything', (text) => {
    expect(parsed(text).dynamic).toBe(true);
  });

  it.each([
    ['_xldudf_TONROW_DOUBLE(1)'],
    ['TONROW.DOUBLE(1)'],
    ['_xll.TONROW.DOUBLE(1)'],
    ['_XLDUDF_TONROW_double(1)'],
  ])('%s is ours', (text) => {
    expect(parsed(text)).toMatchObject({ ours: true, unsupported: undefined });
  });
});
