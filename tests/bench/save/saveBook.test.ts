import { describe, expect, it } from 'vitest';
import { openBook } from '../../../src/bench/open/openBook.js';
import { GridWorkbook } from '../../../src/bench/port/gridWorkbook.js';
import { saveBook } from '../../../src/bench/save/saveBook.js';
import { openWorkbook } from '../../../src/xlsx/workbook.js';
import { readSheetValues } from '../../../src/xlsx/readSheetValues.js';
import { pressChange, recalculatedQuote } from '../../golden/quote.js';
import { cell, functions, openExample, savedExample } from '../support/openExample.js';

describe('saving an unchanged workbook', () => {
  it('stores the values that the headless command calculates', async () => {
    const { bytes, notes } = saveBook(openExample());
    expect(notes).toEqual([]);
    const { bytes: calculated } = await recalculatedQuote();
    for (const sheet of ['Quote', 'Shop', 'Summary', 'List check'])
      expect(readSheetValues(bytes, sheet)).toEqual(readSheetValues(calculated, sheet));
  });

  it('changes nothing when saved again', () => {
    const once = savedExample();
    expect(saveBook(openBook(once, functions)).bytes).toEqual(once);
  });
});

describe('saving what was edited', () => {
  it('stores a changed press value and everything that hangs on it', async () => {
    const change = pressChange('Punch force', 'Bay B', 40);
    const open = openExample();
    open.book.model.dispatch('UPDATE_CELL', { ...cell(open.book, change.sheet, change.cell), content: '40' });
    const { bytes: calculated } = await recalculatedQuote([change]);
    const saved = readSheetValues(saveBook(open).bytes, 'Quote');
    expect(saved).toEqual(readSheetValues(calculated, 'Quote'));
    expect(saved).not.toEqual(readSheetValues(savedExample(), 'Quote'));
  });

  it('stores new constants, formulas and spills, which come back as they were', () => {
    const open = openExample();
    const write = (address: string, content: string) =>
      open.book.model.dispatch('UPDATE_CELL', { ...cell(open.book, 'Summary', address), content });
    write('T1', "'=1+1");
    write('T2', "'1/2 & <b>");
    write('T3', '=SUM(Parts[Qty])*2');
    write('T4', '=TONROW.PUNCHFORCE("13/16","3/8","A36",ShopStamp)');
    write('T6', '=TONROW.WORKING("PUNCHFORCE","13/16","3/8","A36")');
    const again = openBook(saveBook(open).bytes, functions);
    for (const address of ['T1', 'T2', 'T3', 'T4', 'T6', 'U6', 'U8']) {
      const [was, is] = [cell(open.book, 'Summary', address), cell(again.book, 'Summary', address)];
      expect(again.book.value(is)).toEqual(open.book.value(was));
      expect(again.book.formula(is)).toEqual(open.book.formula(was));
    }
    expect(again.book.value(cell(again.book, 'Summary', 'T1'))).toBe('=1+1');
    expect(again.book.value(cell(again.book, 'Summary', 'T3'))).toBeTypeOf('number');
    expect(again.book.value(cell(again.book, 'Summary', 'U8'))).not.toBeNull();
  });

  it('takes a formula out where a constant replaced it', () => {
    const open = openExample();
    open.book.model.dispatch('UPDATE_CELL', { ...cell(open.book, 'Quote', 'A6'), content: 'by hand' });
    const again = openBook(saveBook(open).bytes, functions).book;
    expect(again.formula(cell(again, 'Quote', 'A6'))).toBeUndefined();
    expect(again.value(cell(again, 'Quote', 'A6'))).toBe('by hand');
    expect(again.formula(cell(again, 'Quote', 'A7'))).toBe(open.book.formula(cell(open.book, 'Quote', 'A7')));
  });

  it('stores new sheets, tables, names and number formats', async () => {
    const open = openExample();
    const port = new GridWorkbook(open.book);
    const area = { sheet: 'New & <sheet>', row: 1, column: 1, rows: 3, columns: 2 };
    const plan = await port.plan([
      { kind: 'sheet', name: area.sheet },
      {
        kind: 'cells',
        area,
        contents: [
          ['Mark', 'Share "x"'],
          ['1/2', 0.5],
          ['=A1', { formula: '=B3*2' }],
        ],
        formats: [
          ['@', 'General'],
          ['@', '0.0%'],
          ['General', '0.0%'],
        ],
      },
      { kind: 'table', name: 'NewTable', area },
      { kind: 'name', name: 'NewName', area: { ...area, rows: 1, columns: 1 } },
    ]);
    await port.write(plan);
    const { bytes, notes } = saveBook(open);
    expect(notes).toEqual([]);
    const { sheets, tables, names } = openWorkbook(bytes);
    expect(sheets.map(({ name }) => name)).toContain(area.sheet);
    expect(tables.find(({ name }) => name === 'NewTable')?.columns).toEqual(['Mark', 'Share "x"']);
    expect(names.find(({ name }) => name === 'NewName')?.text).toBe("'New & <sheet>'!$B$2");
    const again = new GridWorkbook(openBook(bytes, functions).book);
    const [before] = await port.read([{ table: 'NewTable' }], ['values', 'formulas', 'formats', 'text']);
    const [after] = await again.read([{ table: 'NewTable' }], ['values', 'formulas', 'formats', 'text']);
    expect(after).toEqual(before);
    expect(after?.text[1]?.[1]).toBe('50.0%');
  });

  it('stores rows that were inserted into a list, with the list grown around them', () => {
    const open = openExample();
    const { sheetId } = cell(open.book, 'Quote', 'A1');
    open.book.model.dispatch('ADD_COLUMNS_ROWS', {
      sheetId,
      sheetName: 'Quote',
      dimension: 'ROW',
      base: 9,
      position: 'before',
      quantity: 2,
    });
    open.book.model.dispatch('UPDATE_CELL', { ...cell(open.book, 'Quote', 'B10'), content: 'NEW' });
    const { bytes, notes } = saveBook(open);
    expect(notes).toEqual([]);
    expect(openWorkbook(bytes).tables.find(({ name }) => name === 'Parts')?.zone).toMatchObject({
      top: 4,
      bottom: 55,
    });
    const again = openBook(bytes, functions).book;
    const column = (book: typeof again, letter: string) =>
      Array.from({ length: 52 }, (_, row) => book.value(cell(book, 'Quote', `${letter}${row + 5}`)) ?? '');
    for (const letter of ['A', 'B', 'D', 'R', 'S', 'U'])
      expect(column(again, letter)).toEqual(column(open.book, letter));
    expect(column(again, 'B').slice(4, 8)).toEqual(['BP4', 'NEW', '', 'BP5']);
    expect(again.format(cell(again, 'Quote', 'S20'))).toBe(open.book.format(cell(open.book, 'Quote', 'S20')));
  });

  it('stores a column that was added to a table, with its formulas', async () => {
    const open = openExample();
    const port = new GridWorkbook(open.book);
    await port.write(
      await port.plan([
        {
          kind: 'column',
          table: 'Parts',
          rightOf: 'Verdict',
          heading: 'Path',
          contents: [
            {
              formula:
                '=TONROW.ROWCHECK(Parts[[#Headers],[Mark]:[Press]],Parts[@[Mark]:[Press]],ShopStamp,"route")',
            },
          ],
        },
      ]),
    );
    const { bytes } = saveBook(open);
    const table = openWorkbook(bytes).tables.find(({ name }) => name === 'Parts');
    expect(table?.columns.slice(0, 3)).toEqual(['Verdict', 'Path', 'Mark']);
    const again = openBook(bytes, functions).book;
    for (const address of ['A6', 'B6', 'C6', 'T6', 'Y6', 'Y54']) {
      const [is, was] = [cell(again, 'Quote', address), cell(open.book, 'Quote', address)];
      expect(again.value(is)).toEqual(open.book.value(was));
    }
    expect(String(again.value(cell(again, 'Quote', 'B6')))).toMatch(/punch/);
  });
});
