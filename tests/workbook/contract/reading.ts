import { describe, expect, it } from 'vitest';
import { WorkbookError } from '../../../src/workbook/workbookError.js';
import { areaAt, type Open } from './underTest.js';

export function readingContract(open: Open): void {
  describe('reading', () => {
    it('gives values, formulas, formats and what cells show, with null for blanks', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 2, 3), [
        ['Mark', 12.5, '=1+1'],
        [null, 'TRUE', '#N/A'],
      ]);
      const [cells] = await workbook.read([areaAt('A1', 2, 3)], ['values', 'formulas', 'formats', 'text']);
      expect(cells?.area).toEqual(areaAt('A1', 2, 3));
      expect(cells?.values).toEqual([
        ['Mark', 12.5, 2],
        [null, true, '#N/A'],
      ]);
      expect(cells?.formulas).toEqual([
        [null, null, '=1+1'],
        [null, null, null],
      ]);
      expect(cells?.formats[0]).toEqual(['General', 'General', 'General']);
      expect(cells?.text[0]).toEqual(['Mark', '12.5', '2']);
    });

    it('gives only what was asked for', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 1, 1), [['x']]);
      const [cells] = await workbook.read([areaAt('A1', 1, 1)], ['values']);
      expect(Object.keys(cells ?? {}).sort()).toEqual(['area', 'values']);
    });

    it('tells text that looks like a formula from a formula', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 1, 2), [["'=1+1", '=1+1']]);
      const [cells] = await workbook.read([areaAt('A1', 1, 2)], ['values', 'formulas']);
      expect(cells?.values).toEqual([['=1+1', 2]]);
      expect(cells?.formulas).toEqual([[null, '=1+1']]);
    });

    it('finds tables, parts of tables, names and used cells, in the order asked', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('B2', 3, 2), [
        ['Mark', 'Qty'],
        ['C1', 4],
        ['C2', 6],
      ]);
      await hands.addTable('List', areaAt('B2', 3, 2));
      await hands.addName('Total', areaAt('C4', 1, 1));
      const read = await workbook.read(
        [
          { table: 'list', part: 'headings' },
          { table: 'List', part: 'data' },
          { name: 'Total' },
          { usedOf: 'Parts' },
          { table: 'List' },
        ],
        ['values'],
      );
      expect(read.map(({ values }) => values)).toEqual([
        [['Mark', 'Qty']],
        [
          ['C1', 4],
          ['C2', 6],
        ],
        [[6]],
        [
          ['Mark', 'Qty'],
          ['C1', 4],
          ['C2', 6],
        ],
        [
          ['Mark', 'Qty'],
          ['C1', 4],
          ['C2', 6],
        ],
      ]);
      expect(read[1]?.area).toEqual(areaAt('B3', 2, 2));
    });

    it('gives no rows of a sheet that holds nothing', async () => {
      const { workbook } = await open();
      const [cells] = await workbook.read([{ usedOf: 'Parts' }], ['values', 'formats']);
      expect(cells).toEqual({
        area: { sheet: 'Parts', row: 0, column: 0, rows: 0, columns: 0 },
        values: [],
        formats: [],
      });
    });

    it.each([
      ['table', { table: 'Nowhere' }],
      ['name', { name: 'Nowhere' }],
      ['sheet', { usedOf: 'Nowhere' }],
      ['sheet', areaAt('A1', 1, 1, 'Nowhere')],
    ] as const)('names the %s that is not there', async (kind, place) => {
      const { workbook } = await open();
      await expect(workbook.read([{ usedOf: 'Parts' }, place], ['values'])).rejects.toThrow(
        new WorkbookError('missing', `There is no ${kind} "Nowhere".`),
      );
    });

    it('lists sheets with their protection, tables with their headings, and names', async () => {
      const { workbook, hands } = await open();
      await hands.addSheet("It's a list");
      await hands.type(areaAt('A1', 2, 2, "It's a list"), [
        ['Mark', 'Qty'],
        ['C1', 4],
      ]);
      await hands.addTable('List', areaAt('A1', 2, 2, "It's a list"));
      await hands.addName('Where', areaAt('A1', 1, 1, "It's a list"));
      await hands.protect('Parts');
      expect(await workbook.sheets()).toEqual([
        { name: 'Parts', visible: true, protected: true },
        { name: "It's a list", visible: true, protected: false },
      ]);
      expect(await workbook.tables()).toEqual([
        {
          name: 'List',
          area: areaAt('A1', 2, 2, "It's a list"),
          headings: ['Mark', 'Qty'],
          hasTotals: false,
        },
      ]);
      expect(await workbook.names()).toEqual([{ name: 'Where', refersTo: "='It''s a list'!$A$1" }]);
    });

    it('gives no table and no name of a workbook without', async () => {
      const { workbook } = await open();
      expect(await workbook.tables()).toEqual([]);
      expect(await workbook.names()).toEqual([]);
    });

    it('reads nothing when stopped before', async () => {
      const { workbook } = await open();
      const work = { signal: AbortSignal.abort() };
      await expect(workbook.read([{ usedOf: 'Parts' }], ['values'], work)).rejects.toThrow(
        new WorkbookError('canceled', 'Stopped: nothing was read.'),
      );
    });

    it('gives the selected cells, and selects others', async () => {
      const { workbook, hands } = await open();
      await hands.addSheet('Shop');
      await hands.select(areaAt('B2', 2, 1));
      expect(await workbook.selection()).toEqual([areaAt('B2', 2, 1)]);
      await workbook.goTo(areaAt('C3', 1, 1, 'Shop'));
      expect(await workbook.selection()).toEqual([areaAt('C3', 1, 1, 'Shop')]);
    });

    it('names the sheet that is not there to go to', async () => {
      const { workbook } = await open();
      await expect(workbook.goTo(areaAt('A1', 1, 1, 'Gone'))).rejects.toThrow('There is no sheet "Gone".');
    });
  });
}
