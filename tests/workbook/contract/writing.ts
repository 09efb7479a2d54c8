import { describe, expect, it } from 'vitest';
import type { Step } from '../../../src/workbook/step.js';
import { WorkbookError } from '../../../src/workbook/workbookError.js';
import { areaAt, type Open } from './underTest.js';

const one = areaAt('A1', 1, 1);

export function writingContract(open: Open): void {
  describe('widths', () => {
    it('of columns become as asked, others stay', async () => {
      const { workbook, hands } = await open();
      const area = areaAt('B2', 1, 3);
      const plan = await workbook.plan([
        { kind: 'cells', area, contents: [['a', 'b', 'c']], widths: [10, undefined, 60] },
      ]);
      await workbook.write(plan);
      expect([0, 1, 2, 3].map((column) => hands.width('Parts', column))).toEqual([
        undefined,
        10,
        undefined,
        60,
      ]);
    });

    it('of a new column of a table become as asked', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 2, 2), [
        ['Mark', 'Hole'],
        ['P1', '13/16'],
      ]);
      await hands.addTable('List', areaAt('A1', 2, 2));
      const plan = await workbook.plan([
        { kind: 'column', table: 'List', heading: 'Note', contents: ['x'], width: 60 },
      ]);
      await workbook.write(plan);
      expect(hands.width('Parts', 2)).toBe(60);
      expect(hands.width('Parts', 1)).toBeUndefined();
    });

    it('go with the cells that a new column moves', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 2, 2), [
        ['Mark', 'Hole'],
        ['P1', '13/16'],
      ]);
      await hands.addTable('List', areaAt('A1', 2, 2));
      const widths = () => [0, 1, 2].map((column) => hands.width('Parts', column));
      await workbook.write(
        await workbook.plan([{ kind: 'cells', area: areaAt('A1', 1, 2), widths: [30, 12] }]),
      );
      const revert = await workbook.write(
        await workbook.plan([
          { kind: 'column', table: 'List', leftOf: 'Mark', heading: 'Verdict', contents: ['OK'], width: 16 },
        ]),
      );
      expect(widths()).toEqual([16, 30, 12]);
      await revert.run();
      expect(widths().slice(0, 2)).toEqual([30, 12]);
    });

    it('for another number of columns are refused', async () => {
      const { workbook } = await open();
      const area = areaAt('A1', 1, 2);
      await expect(workbook.plan([{ kind: 'cells', area, widths: [10] }])).rejects.toThrow(
        'A1:B1 was given widths for another number of columns.',
      );
    });
  });

  describe('planning', () => {
    it('writes nothing', async () => {
      const { workbook, hands } = await open();
      await workbook.plan([
        { kind: 'cells', area: one, contents: [['x']] },
        { kind: 'sheet', name: 'Shop' },
      ]);
      expect(hands.look('Parts', 0, 0).value).toBe('');
      expect((await workbook.sheets()).map(({ name }) => name)).toEqual(['Parts']);
    });

    it('lists each cell that holds something else, what it holds and what it would hold', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 1, 4), [['old', '=1+1', 'same', null]]);
      const contents = [['new', 5, 'same', 'free']];
      const plan = await workbook.plan([{ kind: 'cells', area: areaAt('A1', 1, 4), contents }]);
      expect(plan.overwrites).toEqual([
        { cell: areaAt('A1', 1, 1), holds: 'old', becomes: 'new', format: 'General' },
        { cell: areaAt('B1', 1, 1), holds: { formula: '=1+1' }, becomes: 5, format: 'General' },
      ]);
      expect(plan.cells).toBe(4);
    });

    it('counts cells whose number format alone would change', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 1, 2), [['a', null]]);
      const plan = await workbook.plan([
        { kind: 'cells', area: areaAt('A1', 1, 3), formats: [['@', '@', 'General']] },
      ]);
      expect(plan.formatted).toBe(1);
      expect(plan.overwrites).toEqual([]);
    });

    it('says which sheets are protected', async () => {
      const { workbook, hands } = await open();
      await hands.protect('Parts');
      const plan = await workbook.plan([{ kind: 'cells', area: one, contents: [['x']] }]);
      expect(plan.protectedSheets.map(({ name }) => name)).toEqual(['Parts']);
    });

    it.each<[string, Step]>([
      ['There is a sheet "parts" already', { kind: 'sheet', name: 'parts' }],
      ['There is a table "List" already', { kind: 'table', name: 'List', area: areaAt('F1', 2, 1) }],
      ['There is a name "Total" already', { kind: 'name', name: 'Total', area: one }],
      [
        'There is a column of List "QTY" already',
        { kind: 'column', table: 'List', heading: 'QTY', contents: [] },
      ],
      ['There is no sheet "Gone"', { kind: 'cells', area: areaAt('A1', 1, 1, 'Gone'), contents: [['x']] }],
      ['There is no table "Gone"', { kind: 'column', table: 'Gone', heading: 'Use', contents: [] }],
      [
        'The table "List" has no column "Gone"',
        { kind: 'column', table: 'List', rightOf: 'Gone', heading: 'Use', contents: [] },
      ],
      [
        'The table "List" has 1 rows, not 2',
        { kind: 'column', table: 'List', heading: 'Use', contents: [1, 2] },
      ],
      ['cannot name a sheet', { kind: 'sheet', name: 'a/b' }],
      ['cannot be a name', { kind: 'name', name: 'A1', area: one }],
      ['another number of rows', { kind: 'cells', area: one, contents: [['x'], ['y']] }],
      ['A formula begins with =', { kind: 'cells', area: one, contents: [[{ formula: 'SUM(A1)' }]] }],
      ['not finite', { kind: 'cells', area: one, contents: [[Number.NaN]] }],
      ['32767 characters', { kind: 'cells', area: one, contents: [['x'.repeat(32_768)]] }],
    ])('refuses: %s', async (sentence, step) => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 2, 2), [
        ['Mark', 'Qty'],
        ['C1', 4],
      ]);
      await hands.addTable('List', areaAt('A1', 2, 2));
      await hands.addName('Total', areaAt('B2', 1, 1));
      const planned = workbook.plan([step]);
      await expect(planned).rejects.toBeInstanceOf(WorkbookError);
      await expect(planned).rejects.toThrow(sentence);
    });

    it('refuses two steps that write the same cell', async () => {
      const { workbook } = await open();
      const step = { kind: 'cells', area: one, contents: [['x']] } as const;
      await expect(workbook.plan([step, step])).rejects.toThrow('Two steps of one plan write A1.');
    });
  });

  describe('planning columns of a table', () => {
    const column: Step = { kind: 'column', table: 'List', rightOf: 'Mark', heading: 'Press', contents: [] };

    it('refuses to write cells right of the table in the same plan, which move', async () => {
      const area = areaAt('D1', 1, 1);
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 1, 2), [['Mark', 'Hole']]);
      await hands.addTable('List', areaAt('A1', 2, 2));
      const cells: Step = { kind: 'cells', area, contents: [['x']] };
      await expect(workbook.plan([cells, column])).rejects.toThrow('The table "List" gets a column');
      await expect(workbook.plan([column, cells])).rejects.toThrow('The table "List" gets a column');
    });

    it('writes cells of the table before its columns, never after', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 1, 2), [['Mark', 'Hole']]);
      await hands.addTable('List', areaAt('A1', 2, 2));
      const cells: Step = { kind: 'cells', area: areaAt('B2', 1, 1), contents: [['x']] };
      await expect(workbook.plan([column, cells])).rejects.toThrow('The table "List" gets a column');
      const revert = await workbook.write(await workbook.plan([cells, column]));
      expect([1, 2].map((at) => hands.look('Parts', 1, at).value)).toEqual(['', 'x']);
      await revert.run();
      expect([1, 2].map((at) => hands.look('Parts', 1, at).value)).toEqual(['', '']);
    });

    it('keeps cells of the table that somebody has changed where the columns have moved them', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 1, 2), [['Mark', 'Hole']]);
      await hands.addTable('List', areaAt('A1', 2, 2));
      const cells: Step = { kind: 'cells', area: areaAt('B2', 1, 1), contents: [['x']] };
      const revert = await workbook.write(await workbook.plan([cells, column]));
      await hands.type(areaAt('C2', 1, 1), [['hers']]);
      await expect(revert.run()).rejects.toThrow('C2 on sheet "Parts" has changed since this was written');
      expect(hands.look('Parts', 1, 2).value).toBe('hers');
    });

    it.each([
      ['left of the new column', areaAt('A2', 1, 1)],
      ['below the table', areaAt('B3', 1, 1)],
    ])('lets cells %s be written with it', async (_, area) => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 1, 2), [['Mark', 'Hole']]);
      await hands.addTable('List', areaAt('A1', 2, 2));
      await workbook.write(await workbook.plan([column, { kind: 'cells', area, contents: [['x']] }]));
      expect(hands.look('Parts', area.row, area.column).value).toBe('x');
    });
  });

  describe('writing', () => {
    it('refuses to overwrite before somebody has said yes, and writes nothing then', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 1, 1), [['old']]);
      const plan = await workbook.plan([
        { kind: 'cells', area: areaAt('A1', 1, 2), contents: [['new', 'free']] },
      ]);
      await expect(workbook.write(plan)).rejects.toMatchObject({ trouble: 'not confirmed' });
      expect([hands.look('Parts', 0, 0).value, hands.look('Parts', 0, 1).value]).toEqual(['old', '']);
      await workbook.write(plan, { confirmed: true });
      expect([hands.look('Parts', 0, 0).value, hands.look('Parts', 0, 1).value]).toEqual(['new', 'free']);
    });

    it('needs no yes for blank cells', async () => {
      const { workbook, hands } = await open();
      await workbook.write(await workbook.plan([{ kind: 'cells', area: one, contents: [[12]] }]));
      expect(hands.look('Parts', 0, 0)).toEqual({ value: 12, format: 'General' });
    });

    it('leaves cells alone that are not given, and clears those given as null', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 1, 2), [['stays', 'goes']]);
      const plan = await workbook.plan([
        { kind: 'cells', area: areaAt('A1', 1, 2), contents: [[undefined, null]] },
      ]);
      expect(plan.overwrites).toHaveLength(1);
      await workbook.write(plan, { confirmed: true });
      expect([hands.look('Parts', 0, 0).value, hands.look('Parts', 0, 1).value]).toEqual(['stays', '']);
    });

    it('refuses where somebody changed a cell since the plan, even a blank one', async () => {
      const { workbook, hands } = await open();
      const plan = await workbook.plan([{ kind: 'cells', area: areaAt('A1', 1, 2), contents: [['a', 'b']] }]);
      await hands.type(areaAt('B1', 1, 1), [['hers']]);
      await expect(workbook.write(plan)).rejects.toThrow(
        new WorkbookError(
          'changed',
          'B1 on sheet "Parts" was changed meanwhile: look again before you write.',
        ),
      );
      expect(hands.look('Parts', 0, 0).value).toBe('');
    });

    it.each<[string, Step]>([
      ['sheet "Shop"', { kind: 'sheet', name: 'Shop' }],
      ['table "Presses"', { kind: 'table', name: 'Presses', area: areaAt('H1', 2, 1) }],
      ['name "ShopStamp"', { kind: 'name', name: 'ShopStamp', area: one }],
    ])('leaves alone a %s that somebody else has added since the plan', async (_, step) => {
      const { workbook, hands } = await open();
      const plan = await workbook.plan([
        { kind: 'cells', area: areaAt('J1', 1, 1), contents: [['x']] },
        step,
      ]);
      await hands.addSheet('Shop');
      await hands.type(areaAt('A1', 2, 1, 'Shop'), [['Item'], ['hers']]);
      await hands.addTable('Presses', areaAt('A1', 2, 1, 'Shop'));
      await hands.addName('ShopStamp', areaAt('A2', 1, 1, 'Shop'));
      await expect(workbook.write(plan)).rejects.toMatchObject({ trouble: 'exists' });
      expect(hands.look('Shop', 1, 0).value).toBe('hers');
      expect((await workbook.tables()).map(({ name }) => name)).toEqual(['Presses']);
      expect(await workbook.names()).toHaveLength(1);
      expect(hands.look('Parts', 0, 9).value).toBe('');
    });

    it('refuses a column of a table that has moved since the plan', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 2, 2), [
        ['Mark', 'Hole'],
        ['C1', 1],
      ]);
      await hands.addTable('List', areaAt('A1', 2, 2));
      const plan = await workbook.plan([{ kind: 'column', table: 'List', heading: 'Use', contents: [5] }]);
      await hands.type(areaAt('B1', 1, 1), [['Bore']]);
      await expect(workbook.write(plan)).rejects.toThrow('The table "List" was changed meanwhile');
      expect((await workbook.tables())[0]?.headings).toEqual(['Mark', 'Bore']);
    });

    it('writes a plan once', async () => {
      const { workbook } = await open();
      const plan = await workbook.plan([{ kind: 'cells', area: one, contents: [['a']] }]);
      await workbook.write(plan);
      await expect(workbook.write(plan)).rejects.toThrow('This plan was written already');
    });

    it('makes a sheet with cells, a table and a name together', async () => {
      const { workbook, hands } = await open();
      const area = areaAt('A1', 2, 2, 'Shop');
      const contents = [
        ['Item', 'Bay A'],
        ['Punch throat', 12],
      ];
      await workbook.write(
        await workbook.plan([
          { kind: 'sheet', name: 'Shop' },
          { kind: 'cells', area, contents },
          { kind: 'table', name: 'Presses', area },
          { kind: 'name', name: 'ShopStamp', area: areaAt('D1', 1, 1, 'Shop') },
        ]),
      );
      expect(await workbook.tables()).toEqual([
        { name: 'Presses', area, headings: ['Item', 'Bay A'], hasTotals: false },
      ]);
      expect((await workbook.read([{ name: 'ShopStamp' }], ['values']))[0]?.area).toEqual(
        areaAt('D1', 1, 1, 'Shop'),
      );
      expect(hands.look('Shop', 1, 1).value).toBe(12);
    });

    it('adds columns right of another and at the end, formulas as formulas beside a text column', async () => {
      const { workbook, hands } = await open();
      await hands.format(areaAt('A1', 2, 2), '@');
      await hands.type(areaAt('A1', 2, 2), [
        ['Mark', 'Hole'],
        ['C1', '13/16'],
      ]);
      await hands.addTable('List', areaAt('A1', 2, 2));
      await workbook.write(
        await workbook.plan([
          { kind: 'column', table: 'List', heading: 'Verdict', contents: [{ formula: '=1+1' }] },
          {
            kind: 'column',
            table: 'List',
            rightOf: 'Mark',
            heading: 'Press',
            contents: ['Bay A'],
            format: '@',
          },
          { kind: 'column', table: 'List', heading: 'Note', contents: [] },
        ]),
      );
      const [table] = await workbook.tables();
      expect(table?.headings).toEqual(['Mark', 'Press', 'Hole', 'Verdict', 'Note']);
      expect(hands.look('Parts', 1, 1)).toEqual({ value: 'Bay A', format: '@' });
      expect(hands.look('Parts', 1, 2)).toEqual({ value: '13/16', format: '@' });
      expect(hands.look('Parts', 1, 3)).toEqual({ value: 2, formula: '=1+1', format: 'General' });
    });

    it('makes cells a table and puts a column left of its first, and takes both back', async () => {
      const { workbook, hands } = await open();
      await hands.format(areaAt('A1', 2, 2), '@');
      await hands.type(areaAt('A1', 2, 2), [
        ['Piece', 'Hole'],
        ['C1', '13/16'],
      ]);
      const formula = '=1+1';
      const revert = await workbook.write(
        await workbook.plan([
          { kind: 'cells', area: areaAt('A1', 1, 1), contents: [['Mark']] },
          { kind: 'cells', area: areaAt('B2', 1, 1), formats: [['General']] },
          { kind: 'table', name: 'List', area: areaAt('A1', 2, 2), headings: ['Mark', 'Hole'] },
          { kind: 'column', table: 'List', leftOf: 'mark', heading: 'Verdict', contents: [{ formula }] },
          { kind: 'column', table: 'List', heading: 'Note', contents: [{ formula }] },
        ]),
        { confirmed: true },
      );
      const [table] = await workbook.tables();
      expect(table).toMatchObject({
        area: areaAt('A1', 2, 4),
        headings: ['Verdict', 'Mark', 'Hole', 'Note'],
      });
      expect(hands.look('Parts', 1, 0)).toEqual({ value: 2, formula, format: 'General' });
      expect(hands.look('Parts', 1, 1)).toEqual({ value: 'C1', format: '@' });
      expect(hands.look('Parts', 1, 3)).toEqual({ value: 2, formula, format: 'General' });
      await revert.run();
      expect(await workbook.tables()).toEqual([]);
      const held = [0, 1, 2].map((at) => [hands.look('Parts', 0, at).value, hands.look('Parts', 1, at)]);
      expect(held).toEqual([
        ['Piece', { value: 'C1', format: '@' }],
        ['Hole', { value: '13/16', format: '@' }],
        ['', { value: '', format: 'General' }],
      ]);
    });

    it('lets a table span rows written below it', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 2, 1), [['Size'], ['3/4 in']]);
      await hands.addTable('Tools', areaAt('A1', 2, 1));
      await workbook.write(
        await workbook.plan([
          { kind: 'cells', area: areaAt('A3', 1, 1), contents: [['7/8 in']] },
          { kind: 'resize', table: 'Tools', area: areaAt('A1', 3, 1) },
        ]),
      );
      const [tools] = await workbook.read([{ table: 'Tools', part: 'data' }], ['values']);
      expect(tools?.values).toEqual([['3/4 in'], ['7/8 in']]);
    });

    it('explains a protected sheet in one sentence and leaves everything as it was', async () => {
      const { workbook, hands } = await open();
      await hands.addSheet('Shop');
      await hands.protect('Shop');
      const plan = await workbook.plan([
        { kind: 'cells', area: one, contents: [['first']] },
        { kind: 'sheet', name: 'New' },
        { kind: 'name', name: 'Here', area: one },
        { kind: 'cells', area: areaAt('A1', 1, 1, 'Shop'), contents: [['second']] },
      ]);
      await expect(workbook.write(plan)).rejects.toThrow(
        new WorkbookError('protected', 'The sheet is protected: unprotect it under Review, then try again.'),
      );
      expect(hands.look('Parts', 0, 0)).toEqual({ value: '', format: 'General' });
      expect((await workbook.sheets()).map(({ name }) => name)).toEqual(['Parts', 'Shop']);
      expect(await workbook.names()).toEqual([]);
    });

    it('takes back everything when a formula is refused halfway', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 2, 1), [['Mark'], ['C1']]);
      await hands.addTable('List', areaAt('A1', 2, 1));
      await hands.type(areaAt('D1', 1, 1), [['=1+1']]);
      await hands.format(areaAt('E1', 1, 1), '@');
      const plan = await workbook.plan([
        { kind: 'column', table: 'List', heading: 'Use', contents: [5] },
        { kind: 'cells', area: areaAt('A9', 1, 2), contents: [['a', 'b']], formats: [['@', '0.00']] },
        { kind: 'cells', area: areaAt('A10', 1, 1), contents: [[{ formula: '=ROUND((1)' }]] },
      ]);
      await expect(workbook.write(plan)).rejects.toMatchObject({ trouble: 'not allowed' });
      expect(hands.look('Parts', 8, 0)).toEqual({ value: '', format: 'General' });
      expect(hands.look('Parts', 8, 1)).toEqual({ value: '', format: 'General' });
      expect((await workbook.tables())[0]?.headings).toEqual(['Mark']);
      expect(hands.look('Parts', 0, 3)).toMatchObject({ formula: '=1+1' });
    });

    it('writes nothing when stopped before', async () => {
      const { workbook, hands } = await open();
      const plan = await workbook.plan([{ kind: 'cells', area: one, contents: [['x']] }]);
      await expect(workbook.write(plan, { signal: AbortSignal.abort() })).rejects.toMatchObject({
        trouble: 'canceled',
      });
      expect(hands.look('Parts', 0, 0).value).toBe('');
    });
  });
}
