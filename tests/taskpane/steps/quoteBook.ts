import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import type { Area } from '../../../src/workbook/area.js';
import type { Content } from '../../../src/workbook/content.js';
import { bayA, bayB, pressTable, settingTable } from '../../support/sampleShop.js';
import { MemoryWorkbook } from '../support/memoryWorkbook.js';

export const cell = (sheet: string, row: number, column: number): Area => ({
  sheet,
  row,
  column,
  rows: 1,
  columns: 1,
});

export const partHeadings = [
  'Mark',
  'Qty',
  'Section',
  'Grade',
  'Length',
  'Hole',
  'Holes',
  'Bolt',
  'Edge',
  'End',
  'Pitch',
  'Gage',
  'Press',
];
export const hostileMark = '<img src=x onerror=alert(1)>';
export const parts: CellValue[][] = [
  ['BP1', 6, 'PL1/2X10', 'A36', '10', '1-5/16', 4, '3/4', 2, 2, 6, 6, 'Bay B'],
  ['A1', 6, 'L3x3x1/4', 'A36', "6'-0", '13/16', 6, '3/4', null, '7/8', '3', '1-3/4', 'Bay A'],
  [hostileMark, 1, 'PL3/8X8', 'A36', "2'-0", 'sq 3/4', 2, 'none', '1', 2, 20, null, 'Bay A'],
  ['OK1', 2, 'PL1/4X6', 'A36', "1'-0", '13/16', 2, '3/4', 3, 3, 6, null, 'Bay A'],
  ['Subtotal', null, null, null, null, null, null, null, null, null, null, null, null],
];
const items = ['verdict', 'use', 'note'];
const rowCheck = (item: string): Content => ({
  formula: `=TONROW.ROWCHECK(Parts[[#Headers],[Mark]:[Press]],Parts[@[Mark]:[Press]],ShopStamp,"${item}")`,
});

/** Row of the headings of the list, and column of its verdicts. */
export const listRow = 4;
export const verdictColumn = partHeadings.length;

/** A quote with a shop, a checked list that is a table, and cells with single calls. */
export function quoteBook(): MemoryWorkbook {
  const book = new MemoryWorkbook('Quote', 'Shop', 'List check');
  const { memory } = book;
  const presses = pressTable({ 'Bay A': bayA, 'Bay B': bayB });
  const settings = settingTable({ Units: 'in', 'Edge code': 'AISC' });
  book.type('Shop', 5, 0, presses).type('Shop', 5, 5, settings);
  memory.tables.push(
    {
      name: 'Presses',
      area: { sheet: 'Shop', row: 5, column: 0, rows: presses.length, columns: 4 },
      hasTotals: false,
    },
    {
      name: 'Settings',
      area: { sheet: 'Shop', row: 5, column: 5, rows: settings.length, columns: 2 },
      hasTotals: false,
    },
    {
      name: 'Parts',
      area: {
        sheet: 'Quote',
        row: listRow,
        column: 0,
        rows: parts.length + 1,
        columns: partHeadings.length + items.length,
      },
      hasTotals: false,
    },
  );
  memory.names.push({ name: 'ShopStamp', area: cell('Shop', 3, 1) });
  book.type('Shop', 3, 1, [
    [{ formula: '=TONROW.SHOP(Presses[[#Headers],[#Data]],,,Settings[[#Headers],[#Data]])' }],
  ]);
  book.type('Quote', listRow, 0, [
    [...partHeadings, 'Verdict', 'Share of rating', 'Note'],
    ...parts.map((row) => [...row, ...items.map(rowCheck)]),
  ]);
  book.type('Quote', 12, 1, [
    ['13/16', '3/8', 'A36', { formula: '=TONROW.PUNCHFORCE(B13,C13,D13,ShopStamp)' }],
  ]);
  memory.set('Quote', 12, 4, { value: 23.9 });
  book.type('List check', 2, 0, [
    [{ formula: '=TONROW.LISTCHECK(Parts[[#All],[Mark]:[Press]],ShopStamp,"verdict,use")' }],
  ]);
  return book;
}
