import { describe, expect, it } from 'vitest';
import { openBook } from '../../../src/bench/open/openBook.js';
import { saveBook } from '../../../src/bench/save/saveBook.js';
import { readSheetValues } from '../../../src/xlsx/readSheetValues.js';
import { buildWorkbook, formula, spilled, spilling } from '../../xlsx/support/buildWorkbook.js';
import { cell, functions } from '../support/openExample.js';

const bytes = buildWorkbook([
  {
    name: 'Calc',
    rows: [
      [2, formula('A1*3', 6), formula('NOW()', 45_000.5)],
      // With the same inputs the file says something else than the grid would.
      [4, formula('A2*3', 13), formula('B2+1', 14)],
      [6, formula('_xlfn.LET(_xlpm.x,A3,_xlpm.x*2)', 12), formula('IF(A3=6,"say ""x""","")', 'say "x"')],
      [formula('_xlfn.SEQUENCE(2)', 1), formula('[1]Other!A1', '#REF!'), formula('A1&""', '2')],
      [spilling('_xlfn._xlws.SORT(A1:A3)', 'A5:A7', 2), null, null],
      [spilled(4)],
      [spilled(6)],
    ],
  },
]);

const open = openBook(bytes, functions);
const { book } = open;
const at = (address: string) => cell(book, 'Calc', address);
const kept = new Map(
  open.formulas.map(({ row, column, kept: why }) => [`${'ABC'[column]}${row + 1}`, why] as const),
);

describe('formulas that are not calculated in the grid', () => {
  it('are told with their reason, the others are calculated', () => {
    expect(Object.fromEntries(kept)).toEqual({
      B1: undefined,
      C1: 'It uses NOW, whose value depends on the moment.',
      B2: 'With the same inputs it comes out otherwise here than in the file.',
      C2: undefined,
      B3: expect.stringContaining('It uses LET'),
      C3: undefined,
      A4: 'It uses SEQUENCE, which is not among the functions evaluated here.',
      B4: 'It reads another workbook.',
      C4: undefined,
      A5: 'It uses SORT, which is not among the functions evaluated here.',
    });
  });

  it('keep the value of the file and show their own text', () => {
    expect(book.value(at('C1'))).toBe(45_000.5);
    expect(book.value(at('B2'))).toBe(13);
    expect(book.value(at('C2'))).toBe(14);
    expect(book.value(at('C3'))).toBe('say "x"');
    expect(book.storedValue(at('B4'))).toEqual({ error: '#REF!' });
    expect(['A5', 'A6', 'A7'].map((address) => book.value(at(address)))).toEqual([2, 4, 6]);
    expect(book.formula(at('C1'))).toBe('=NOW()');
    expect(book.formula(at('C3'))).toBe('=IF(A3=6,"say ""x""","")');
    expect(book.isKept(at('C1'))).toBe(true);
    expect(book.isKept(at('C3'))).toBe(false);
  });

  it('are saved byte for byte while nothing changes', () => {
    expect(saveBook(open)).toEqual({ bytes, notes: [] });
  });

  it('are named when what they read was changed', () => {
    const again = openBook(bytes, functions);
    again.book.model.dispatch('UPDATE_CELL', { ...cell(again.book, 'Calc', 'A3'), content: '7' });
    const { bytes: saved, notes } = saveBook(again);
    expect(notes).toEqual([
      'Calc!B3 and 1 more keep an old value: the formula is not calculated here, though what it reads has changed.',
    ]);
    expect(readSheetValues(saved, 'Calc')[2]?.slice(0, 2)).toEqual([7, 12]);
  });

  it('stay what they are when rows are inserted above them', () => {
    const again = openBook(bytes, functions).book;
    again.model.dispatch('ADD_COLUMNS_ROWS', {
      sheetId: at('A1').sheetId,
      sheetName: 'Calc',
      dimension: 'ROW',
      base: 0,
      position: 'before',
      quantity: 1,
    });
    expect(again.value(cell(again, 'Calc', 'C2'))).toBe(45_000.5);
    expect(again.formula(cell(again, 'Calc', 'C2'))).toBe('=NOW()');
    expect(again.isKept(cell(again, 'Calc', 'C2'))).toBe(true);
  });
});
