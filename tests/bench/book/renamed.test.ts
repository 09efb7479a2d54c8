import { beforeEach, describe, expect, it } from 'vitest';
import type { GridBook } from '../../../src/bench/book/gridBook.js';
import { openBook, type OpenBook } from '../../../src/bench/open/openBook.js';
import { saveBook } from '../../../src/bench/save/saveBook.js';
import { cell, functions, openExample } from '../support/openExample.js';

let open: OpenBook;
beforeEach(() => {
  open = openExample();
});

const type = (book: GridBook, address: string, content: string) =>
  book.model.dispatch('UPDATE_CELL', { ...cell(book, 'Quote', address), content });

/** All formulas of a sheet as they read. */
function formulasOf({ book }: OpenBook, sheet: string): string[] {
  const id = book.sheetIdOf(sheet) as string;
  return book.getters
    .getCells(id)
    .flatMap(({ id: one }) => book.formula(book.getters.getCellPosition(one)) ?? []);
}

const keptIn = ({ formulas }: OpenBook) => formulas.filter(({ kept }) => kept !== undefined);

/** Saved and opened again; every formula is calculated, with the values it had. */
function again(): OpenBook {
  const next = openBook(saveBook(open).bytes, functions);
  expect(keptIn(next)).toEqual(keptIn(openExample()));
  for (const sheet of ['Quote', 'Summary', 'List check'])
    for (const { id } of open.book.getters.getCells(open.book.sheetIdOf(sheet) as string)) {
      const { row, col } = open.book.getters.getCellPosition(id);
      const at = (book: GridBook) => ({ sheetId: book.sheetIdOf(sheet) as string, row, col });
      expect(next.book.storedValue(at(next.book))).toEqual(open.book.storedValue(at(open.book)));
    }
  return next;
}

describe('a heading that somebody renames in the grid', () => {
  it('is followed by the formulas that name it, here and in the saved file', () => {
    const before = formulasOf(open, 'Quote').length;
    type(open.book, 'B5', 'Piece');
    type(open.book, 'Q5', "Machine [bay's]");
    const span = "[Piece]:[Machine '[bay''s']]";
    const check = `=TONROW.ROWCHECK(Parts[[#Headers],${span}],Parts[[#This Row],${span}],ShopStamp,"verdict")`;
    const next = again();
    for (const { book } of [open, next]) expect(book.formula(cell(book, 'Quote', 'A6'))).toBe(check);
    expect(formulasOf(next, 'Quote')).toHaveLength(before);
    expect(formulasOf(next, 'Quote').join()).not.toContain('[Mark]');
    expect(next.workbook.tables[0]?.columns[1]).toBe('Piece');
  });

  it('is followed inside a span, which keeps its ends', () => {
    const check = open.book.formula(cell(open.book, 'Quote', 'A6'));
    type(open.book, 'G5', 'Bore');
    const next = again();
    expect(next.book.formula(cell(next.book, 'Quote', 'A6'))).toBe(check);
    expect(next.workbook.tables[0]?.columns[6]).toBe('Bore');
  });

  it('is followed from another sheet', () => {
    type(open.book, 'A5', 'Says');
    const { book } = again();
    expect(book.formula(cell(book, 'Summary', 'B4'))).toBe('=COUNTIF(Parts[Says],A4)');
  });

  it('is followed where two headings change places', () => {
    type(open.book, 'B5', 'Qty');
    type(open.book, 'C5', 'Mark');
    const { book } = again();
    expect(book.formula(cell(book, 'Quote', 'A6'))).toContain('Parts[[#Headers],[Qty]:[Press]]');
  });

  it('has its old name again in all formulas when that is undone', () => {
    const before = formulasOf(open, 'Quote');
    type(open.book, 'B5', 'Piece');
    formulasOf(open, 'Quote');
    open.book.model.dispatch('REQUEST_UNDO');
    expect(formulasOf(open, 'Quote')).toEqual(before);
  });

  it('stays unlike the others and is never blank', () => {
    type(open.book, 'C5', 'mark');
    type(open.book, 'D5', '');
    const { book } = open;
    expect(['C5', 'D5'].map((address) => book.value(cell(book, 'Quote', address)))).toEqual([
      'mark2',
      'Column4',
    ]);
    expect(again().workbook.tables[0]?.columns.slice(1, 4)).toEqual(['Mark', 'mark2', 'Column4']);
    book.model.dispatch('REQUEST_UNDO');
    expect(book.value(cell(book, 'Quote', 'D5'))).toBe('Section');
  });

  it('is text in the file, also where it looks like a number', () => {
    type(open.book, 'B5', '2024');
    const next = again();
    expect(next.workbook.tables[0]?.columns[1]).toBe('2024');
    expect(next.book.value(cell(next.book, 'Quote', 'B5'))).toBe('2024');
  });
});

describe('a table that somebody deletes in the grid', () => {
  it('leaves formulas over the cells it had', () => {
    const { book } = open;
    const [table] = book.tables.all();
    if (!table) throw new Error('the example has no table');
    book.model.dispatch('REMOVE_TABLE', { sheetId: table.sheetId, target: [table.zone] });
    const next = again();
    expect(next.workbook.tables.map(({ name }) => name)).not.toContain('Parts');
    expect(next.book.formula(cell(next.book, 'Quote', 'A6'))).toBe(
      '=TONROW.ROWCHECK($B$5:$Q$5,$B6:$Q6,ShopStamp,"verdict")',
    );
    expect(next.book.formula(cell(next.book, 'Summary', 'B4'))).toBe('=COUNTIF(Quote!$A$6:$A$54,A4)');
    book.model.dispatch('REQUEST_UNDO');
    expect(book.formula(cell(book, 'Summary', 'B4'))).toBe('=COUNTIF(Parts[Verdict],A4)');
  });

  it('leaves the others what they were', () => {
    const { book } = open;
    const stamp = book.formula(cell(book, 'Shop', 'B4'));
    const table = book.tables.find('Parts');
    book.model.dispatch('REMOVE_TABLE', { sheetId: table?.sheetId ?? '', target: table ? [table.zone] : [] });
    expect(book.formula(cell(book, 'Shop', 'B4'))).toBe(stamp);
  });
});

describe('a table that changes in the grid', () => {
  const insertColumn = ({ model, tables }: GridBook) =>
    model.dispatch('ADD_COLUMNS_ROWS', {
      sheetId: tables.find('Parts')?.sheetId ?? '',
      sheetName: 'Quote',
      dimension: 'COL',
      base: 3,
      position: 'after',
      quantity: 2,
    });

  it('gets headings for inserted columns at once, in the step that is undone with them', () => {
    const { book } = open;
    insertColumn(book);
    const row = ['D5', 'E5', 'F5', 'G5'].map((address) => book.value(cell(book, 'Quote', address)));
    expect(row).toEqual(['Section', 'Column5', 'Column6', 'Grade']);
    const next = again();
    expect(next.workbook.tables[0]?.columns.slice(3, 7)).toEqual(row);
    expect(next.book.value(cell(next.book, 'Quote', 'E5'))).toBe('Column5');
    book.model.dispatch('REQUEST_UNDO');
    expect(book.value(cell(book, 'Quote', 'E5'))).toBe('Grade');
  });

  it('is taken in by formulas over it when it grows by what is typed below it', () => {
    const { book } = open;
    type(book, 'I60', '=SUM(Parts[Qty])');
    const { sheetId } = cell(book, 'Quote', 'A1');
    book.model.dispatch('ADD_COLUMNS_ROWS', {
      sheetId,
      sheetName: 'Quote',
      dimension: 'ROW',
      base: 53,
      position: 'after',
      quantity: 1,
    });
    const before = book.value(cell(book, 'Quote', 'I61')) as number;
    type(book, 'C55', '1000');
    expect(book.tables.find('Parts')?.zone.bottom).toBe(54);
    expect(book.value(cell(book, 'Quote', 'I61'))).toBe(before + 1000);
    expect(book.formula(cell(book, 'Quote', 'I61'))).toBe('=SUM(Parts[Qty])');
    expect(again().book.formula(cell(book, 'Summary', 'B4'))).toBe('=COUNTIF(Parts[Verdict],A4)');
    book.model.dispatch('REQUEST_UNDO');
    expect(book.value(cell(book, 'Quote', 'I61'))).toBe(before);
  });
});
