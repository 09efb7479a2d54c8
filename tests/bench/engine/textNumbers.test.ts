import { beforeEach, describe, expect, it } from 'vitest';
import type { GridBook } from '../../../src/bench/book/gridBook.js';
import { openGrid } from '../support/gridUnderTest.js';
import type { Workbook } from '../../../src/workbook/port.js';

let book: GridBook;
let workbook: Workbook;
const area = { sheet: 'Parts', row: 0, column: 0, rows: 1, columns: 4 };
beforeEach(async () => {
  ({ book, workbook } = await openGrid());
  const formats = [['@', '@', '@', '@']];
  await workbook.write(
    await workbook.plan([{ kind: 'cells', area, contents: [[300, 22.5, -7, '3/8']], formats }]),
  );
});

const seen = async () => (await workbook.read([area], ['values', 'text', 'formats']))[0];
const type = (col: number, content: string, more: object = {}) =>
  book.model.dispatch('UPDATE_CELL', { sheetId: 'parts', row: 0, col, content, ...more });

describe('numbers in text cells', () => {
  it('show their digits and no point behind them, and stay numbers', async () => {
    expect(await seen()).toMatchObject({
      values: [[300, 22.5, -7, '3/8']],
      text: [['300', '22.5', '-7', '3/8']],
      formats: [['@', '@', '@', '@']],
    });
  });

  it('become text by what is typed over them, never a date', async () => {
    type(0, '3/8', { format: 'm/d' });
    type(1, '12');
    type(2, "'1/2");
    expect(await seen()).toMatchObject({
      values: [['3/8', '12', '1/2', '3/8']],
      text: [['3/8', '12', '1/2', '3/8']],
      formats: [['@', '@', '@', '@']],
    });
  });

  it('show all their digits where the grid copies the format of a whole number to them', async () => {
    const format = book.getters.getCell({ sheetId: 'parts', row: 0, col: 0 })?.format;
    type(1, '0.75', { format });
    book.model.dispatch('UPDATE_CELL', { sheetId: 'parts', row: 0, col: 4, content: '1.5' });
    book.model.dispatch('UPDATE_CELL', { sheetId: 'parts', row: 0, col: 4, ...(format && { format }) });
    const text = (col: number) =>
      book.getters.getEvaluatedCell({ sheetId: 'parts', row: 0, col }).formattedValue;
    expect([text(1), text(4)]).toEqual(['0.75', '1.5']);
  });

  it('leave formulas with all digits of their result', () => {
    type(0, '=B1/4');
    expect(book.getters.getEvaluatedCell({ sheetId: 'parts', row: 0, col: 0 }).formattedValue).toBe('5.625');
  });

  it('leave a text cell when they are deleted', () => {
    type(0, '');
    expect(book.getters.getCell({ sheetId: 'parts', row: 0, col: 0 })?.format).toBe('@');
  });
});
