import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import {
  isStockHeadings,
  isStockTable,
  readAvailable,
  readPrice,
  readStock,
} from '../../../src/core/shop/readStock.js';
import { readShop } from '../../../src/core/shop/readShop.js';

const shop = readShop({
  presses: [['Item', 'Unit', 'Bay A']],
  settings: [
    ['Setting', 'Value'],
    ['Units', 'in'],
  ],
});
const head = ['Section', 'Grade', 'Length', 'Price', 'Available'];
const read = (...rows: CellValue[][]) => readStock([head, ...rows], shop);

describe('The Stock table', () => {
  it('is read row by row, blank cells left out and blank rows passed over', () => {
    const { rows, unread } = read(
      ['L 3 x 3 x .25', 'ASTM A36', '20 ft', 84, 12],
      [null, '', null, null, null],
      ['FB 1/4x4', null, 240, null, 'none'],
    );
    expect(unread).toEqual([]);
    expect(rows.map(({ section, ...rest }) => [section.designation, rest])).toEqual([
      ['L3X3X1/4', { row: 1, grade: 'A36', lengthMm: 6096, price: { perBar: 84 }, available: 12 }],
      ['FB1/4X4', { row: 3, lengthMm: 6096, available: 0 }],
    ]);
  });

  it('keeps what it cannot read as a sentence with the row, the heading and the cell', () => {
    const { rows, unread } = read(
      ['L3X3X1/4', null, 'long', 84, null],
      ['what', null, '20 ft', null, null],
      ['L3X3X1/4', null, '20 ft', -1, null],
      ['L3X3X1/4', null, '20 ft', 84, 1.5],
    );
    expect(rows).toEqual([]);
    expect(unread.map(({ row, section }) => [row, section?.designation])).toEqual([
      [1, 'L3X3X1/4'],
      [2, undefined],
      [3, 'L3X3X1/4'],
      [4, 'L3X3X1/4'],
    ]);
    expect(unread.map(({ sentence }) => sentence)).toEqual([
      expect.stringMatching(/^Stock row 1, Length: .*'long'/),
      expect.stringMatching(/^Stock row 2, Section: .*'what'/),
      expect.stringMatching(/^Stock row 3, Price: .*-1/),
      expect.stringMatching(/^Stock row 4, Available: .*1\.5/),
    ]);
  });

  it('needs Section and Length, and is empty where there is no table', () => {
    expect(readStock(undefined, shop)).toEqual({ rows: [], unread: [] });
    expect(() => readStock([['Section', 'Price']], shop)).toThrow(/Length/);
  });

  it('is known by its name or its headings, and no parts list is', () => {
    expect(['Stock', ' STOCK ', 'ShopStock', 'Stocks'].map(isStockTable)).toEqual([true, true, true, false]);
    expect(isStockHeadings(head)).toBe(true);
    expect(isStockHeadings(['Section', 'Length', 'Available'])).toBe(true);
    expect(isStockHeadings(['Section', 'Length'])).toBe(false);
    expect(isStockHeadings(['Mark', ...head])).toBe(false);
    expect(isStockHeadings(['Qty', ...head])).toBe(false);
  });
});

describe('A price of stock', () => {
  const price = (cell: CellValue) => readPrice(cell, 'Price', 'in');
  it('is of a bar, of its length or of its mass', () => {
    expect(price('18.40')).toEqual({ perBar: 18.4 });
    expect(price('18.40 per bar')).toEqual({ perBar: 18.4 });
    expect(price('3.048 per ft')).toEqual({ perMm: 0.01 });
    expect(price('40/m')).toEqual({ perMm: 0.04 });
    // 100 lb are 45.359237 kg by definition.
    expect(price('45.359237 per cwt')).toEqual({ perKg: expect.closeTo(1, 12) as number });
    expect(price('1.60 per kg')).toEqual({ perKg: 1.6 });
  });
  it.each([0, -3, 1e8, '', 'a lot', '12 per mile'])('is not %j', (cell) => {
    expect(() => price(cell)).toThrow(/^Price: /);
  });
});

describe('Bars that can be had', () => {
  it('are a whole number or none', () => {
    expect(['none', 'None', 1, '12', 1e6].map((cell) => readAvailable(cell, 'Available'))).toEqual([
      0, 0, 1, 12, 1e6,
    ]);
    for (const cell of [0, -1, 2.5, 1e6 + 1, 'some'])
      expect(() => readAvailable(cell, 'Available')).toThrow(/^Available: /);
  });
});
