import '../support/engineOnNode.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openBook, type OpenBook } from '../../../src/bench/open/openBook.js';
import { saveBook } from '../../../src/bench/save/saveBook.js';
import { violations } from '../../support/packageReferee.js';
import { formula, workbookParts, zipParts } from '../../xlsx/support/buildWorkbook.js';
import { openWorkbook } from '../../../src/xlsx/workbook.js';
import { WorkbookRefused } from '../../../src/xlsx/refusal/refusal.js';
import { functions, openExample } from '../support/openExample.js';
import { partOf } from '../support/styledWorkbook.js';

/** A small book with a table that checks its rows, and the styles a file must have. */
function smallBook(): Uint8Array {
  const sheets = [
    {
      name: 'Quote',
      rows: [
        ['A list'],
        ['Hole', 'Plate', 'Least'],
        ['13/16', '1/2', formula('_xldudf_TONROW_HOLEMIN(Holes[[#This Row],[Plate]],"A36")', 0.5)],
        ['9/16', '3/8', formula('_xldudf_TONROW_HOLEMIN(Holes[[#This Row],[Plate]],"A36")', 0.375)],
        ['Sum', 1, formula('SUM(B3:B4)', 0)],
      ],
      tables: [{ name: 'Holes', ref: 'A2:C4', columns: ['Hole', 'Plate', 'Least'] }],
    },
    { name: 'More', rows: [['x', 1]] },
  ];
  return zipParts(workbookParts(sheets));
}

type Edit = (open: OpenBook) => void;
const sheetIds = ({ book }: OpenBook) => book.getters.getSheetIds();
const pick = <Item>(items: readonly Item[], at: number) => items[at % items.length] as Item;

const texts = [
  '',
  'A1',
  '3/8',
  '=1+1',
  '=[@Plate]',
  '=SUM(A1:A3)',
  'two\nlines',
  ' padded ',
  '<b>&"\'',
  '_x000a_',
  '0012',
  '1e3',
  'x'.repeat(40_000),
  '=TONROW.HOLEMIN("1/2","A36")',
];
const names = ['Extra', 'History', 'S'.repeat(40), 'a/b', "'quoted'", 'quote', 'Näher'];

const typed = fc
  .record({ sheet: fc.nat(3), row: fc.nat(6), col: fc.nat(4), text: fc.constantFrom(...texts) })
  .map(
    ({ sheet, row, col, text }): Edit =>
      (open) =>
        void open.book.model.dispatch('UPDATE_CELL', {
          sheetId: pick(sheetIds(open), sheet),
          row,
          col,
          content: text,
        }),
  );
const lines = fc
  .record({
    sheet: fc.nat(3),
    at: fc.nat(5),
    count: fc.integer({ min: 1, max: 3 }),
    rows: fc.boolean(),
    add: fc.boolean(),
  })
  .map(
    ({ sheet, at, count, rows, add }): Edit =>
      (open) => {
        const sheetId = pick(sheetIds(open), sheet);
        const dimension = rows ? ('ROW' as const) : ('COL' as const);
        const sheetName = open.book.getters.getSheetName(sheetId);
        if (add)
          open.book.model.dispatch('ADD_COLUMNS_ROWS', {
            sheetId,
            sheetName,
            dimension,
            base: at,
            quantity: count,
            position: 'after',
          });
        else
          open.book.model.dispatch('REMOVE_COLUMNS_ROWS', {
            sheetId,
            sheetName,
            dimension,
            elements: Array.from({ length: count }, (_, index) => at + index),
          });
      },
  );
const sheets = fc.record({ name: fc.constantFrom(...names), which: fc.nat(3), what: fc.nat(2) }).map(
  ({ name, which, what }): Edit =>
    (open) => {
      const sheetId = pick(sheetIds(open), which);
      const { model, getters } = open.book;
      const sheetName = getters.getSheetName(sheetId);
      if (what === 0)
        model.dispatch('CREATE_SHEET', { sheetId: `s${sheetIds(open).length}${name}`, position: 1, name });
      else if (what === 1) model.dispatch('RENAME_SHEET', { sheetId, oldName: sheetName, newName: name });
      else model.dispatch('DELETE_SHEET', { sheetId, sheetName });
    },
);
const edits = fc.array(
  fc.oneof(
    { weight: 4, arbitrary: typed },
    { weight: 3, arbitrary: lines },
    { weight: 1, arbitrary: sheets },
  ),
  {
    minLength: 1,
    maxLength: 6,
  },
);

/** What is wrong with the book when it is saved; nothing where it is refused in a sentence. */
function wrong(open: OpenBook): string[] {
  try {
    return violations(saveBook(open).bytes);
  } catch (error) {
    if (!(error instanceof WorkbookRefused)) throw error;
    return /^[\p{L}"'].*\.$/u.test(error.message) ? [] : [`no sentence: ${error.message}`];
  }
}

describe('a saved book', () => {
  it('keeps the rules of the format whatever was done in it', () => {
    const file = smallBook();
    expect(violations(saveBook(openBook(file, functions)).bytes)).toEqual([]);
    fc.assert(
      fc.property(edits, (done) => {
        const open = openBook(file, functions);
        for (const edit of done) edit(open);
        expect(wrong(open)).toEqual([]);
      }),
      { numRuns: 90 },
    );
  }, 120_000);

  it('does so with the example', () => {
    fc.assert(
      fc.property(edits, (done) => {
        const open = openExample();
        for (const edit of done) edit(open);
        expect(wrong(open)).toEqual([]);
      }),
      { numRuns: 10 },
    );
  }, 120_000);

  const typedIn = (row: number, col: number, content: string) => (open: OpenBook) =>
    void open.book.model.dispatch('UPDATE_CELL', { sheetId: pick(sheetIds(open), 0), row, col, content });

  it.each<[string, Edit, string]>([
    [
      'a formula in a heading',
      typedIn(1, 2, '=1+1'),
      'the heading Quote!C2 of the table Holes holds a formula',
    ],
    ['a text that is too long', typedIn(8, 0, 'x'.repeat(40_000)), 'Quote!A9 holds 40,000 letters'],
    ['a row of no table', typedIn(8, 4, '=[@Plate]'), 'the formula of Quote!E9 says [@…] outside a table'],
    [
      'a table without data',
      (open) =>
        void open.book.model.dispatch('REMOVE_COLUMNS_ROWS', {
          sheetId: pick(sheetIds(open), 0),
          sheetName: 'Quote',
          dimension: 'ROW',
          elements: [2, 3],
        }),
      'the table Holes has no row below its headings',
    ],
    [
      'a long name of a sheet',
      (open) =>
        void open.book.model.dispatch('CREATE_SHEET', { sheetId: 'n', position: 1, name: 'S'.repeat(32) }),
      'has 32 letters, and a file takes 31',
    ],
    [
      'a name of a sheet that the program keeps for itself',
      (open) => void open.book.model.dispatch('CREATE_SHEET', { sheetId: 'n', position: 1, name: 'History' }),
      'no sheet of a file may be called History',
    ],
  ])('refuses %s by name', (_, edit, sentence) => {
    const open = openBook(smallBook(), functions);
    edit(open);
    expect(() => saveBook(open)).toThrow(sentence);
  });

  it('writes a line break in a heading, and a row of its table, as files have them', () => {
    const open = openBook(smallBook(), functions);
    typedIn(1, 0, 'Hole\nsize')(open);
    typedIn(2, 2, '=TONROW.HOLEMIN([@Plate],"A36")')(open);
    const { bytes } = saveBook(open);
    expect(violations(bytes)).toEqual([]);
    expect(partOf(bytes, 'xl/tables/table1.xml')).toContain('name="Hole_x000a_size"');
    const [first] = openWorkbook(bytes).sheets;
    expect(first?.cells?.formulas.filter(Boolean).map((each) => each?.text)).toContain(
      '_xldudf_TONROW_HOLEMIN(Holes[[#This Row],[Plate]],"A36")',
    );
  });
});
