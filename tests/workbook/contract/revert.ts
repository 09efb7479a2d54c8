import { describe, expect, it } from 'vitest';
import { WorkbookError } from '../../../src/workbook/workbookError.js';
import type { Content } from '../../../src/workbook/content.js';
import { areaAt, type Open } from './underTest.js';

export function revertContract(open: Open): void {
  describe('taking back', () => {
    it('restores constants, formulas, error constants and number formats exactly', async () => {
      const { workbook, hands } = await open();
      const area = areaAt('A1', 3, 3);
      await hands.type(area, [
        ['text', 12.5, '=1+1'],
        ["'=1+1", "'0012", '#N/A'],
        [null, '3/8', 'TRUE'],
      ]);
      await hands.format(areaAt('B1', 1, 1), '0.00');
      // Typed as number and formula first, made text cells afterwards: they keep what they hold.
      await hands.format(areaAt('C1', 1, 1), '@');
      await hands.format(areaAt('A2', 1, 1), '@');
      const places = [0, 1, 2].flatMap((row) => [0, 1, 2].map((column) => [row, column] as const));
      const held = () => places.map(([row, column]) => hands.look('Parts', row, column));
      const before = held();
      const contents: Content[][] = [
        [1, 'two', 3],
        ['four', 5, { formula: '=2+2' }],
        ['seven', 'eight', null],
      ];
      const formats = contents.map((row) => row.map(() => '@'));
      const plan = await workbook.plan([{ kind: 'cells', area, contents, formats }]);
      const revert = await workbook.write(plan, { confirmed: true });
      expect(held()).not.toEqual(before);
      expect(hands.look('Parts', 1, 2)).toEqual({ value: 4, formula: '=2+2', format: '@' });
      await revert.run();
      expect(held()).toEqual(before);
      const [read] = await workbook.read([area], ['values', 'formulas']);
      expect(read?.values[1]).toEqual(['=1+1', '0012', '#N/A']);
      expect(read?.formulas[0]?.[2]).toBe('=1+1');
    });

    it('keeps what others write beside and below meanwhile', async () => {
      const { workbook, hands } = await open();
      const contents = [['a', undefined, 'c']];
      const revert = await workbook.write(
        await workbook.plan([{ kind: 'cells', area: areaAt('A1', 1, 3), contents }]),
      );
      await hands.type(areaAt('A2', 1, 1), [['hers']]);
      await revert.run();
      expect(hands.look('Parts', 0, 0).value).toBe('');
      expect(hands.look('Parts', 1, 0).value).toBe('hers');
    });

    it('refuses where somebody changed a written cell since, and changes nothing', async () => {
      const { workbook, hands } = await open();
      const revert = await workbook.write(
        await workbook.plan([{ kind: 'cells', area: areaAt('A1', 1, 2), contents: [['a', 'b']] }]),
      );
      await hands.type(areaAt('B1', 1, 1), [['hers']]);
      await expect(revert.run()).rejects.toThrow(
        new WorkbookError(
          'changed',
          'B1 on sheet "Parts" has changed since this was written, so this was not undone. Undo the later change first, or keep both.',
        ),
      );
      expect([hands.look('Parts', 0, 0).value, hands.look('Parts', 0, 1).value]).toEqual(['a', 'hers']);
    });

    it('keeps what somebody typed since where only the format was written', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 1, 1), [['old']]);
      const revert = await workbook.write(
        await workbook.plan([{ kind: 'cells', area: areaAt('A1', 1, 1), formats: [['@']] }]),
        { confirmed: true },
      );
      await hands.type(areaAt('A1', 1, 1), [['hers']]);
      await revert.run();
      expect(hands.look('Parts', 0, 0)).toEqual({ value: 'hers', format: 'General' });
    });

    it('refuses where somebody changed a number format since', async () => {
      const { workbook, hands } = await open();
      const revert = await workbook.write(
        await workbook.plan([{ kind: 'cells', area: areaAt('A1', 1, 1), contents: [[0.5]] }]),
      );
      await hands.format(areaAt('A1', 1, 1), '0%');
      await expect(revert.run()).rejects.toMatchObject({ trouble: 'changed' });
      expect(hands.look('Parts', 0, 0)).toEqual({ value: 0.5, format: '0%' });
    });

    it('works once', async () => {
      const { workbook } = await open();
      const revert = await workbook.write(
        await workbook.plan([{ kind: 'cells', area: areaAt('A1', 1, 1), contents: [['a']] }]),
      );
      await revert.run();
      await expect(revert.run()).rejects.toThrow('This change is undone already.');
    });

    it('removes a new sheet with its table and name', async () => {
      const { workbook } = await open();
      const area = areaAt('A1', 1, 2, 'Shop list');
      const revert = await workbook.write(
        await workbook.plan([
          { kind: 'sheet', name: 'Shop list' },
          { kind: 'cells', area, contents: [['Item', 'Bay A']] },
          { kind: 'table', name: 'Presses', area: { ...area, rows: 2 } },
          { kind: 'name', name: 'ShopStamp', area: areaAt('D1', 1, 1, 'Shop list') },
        ]),
      );
      await revert.run();
      expect((await workbook.sheets()).map(({ name }) => name)).toEqual(['Parts']);
      expect(await workbook.tables()).toEqual([]);
      expect(await workbook.names()).toEqual([]);
    });

    it('keeps a new sheet on which somebody has written', async () => {
      const { workbook, hands } = await open();
      const revert = await workbook.write(
        await workbook.plan([
          { kind: 'sheet', name: 'Shop' },
          { kind: 'cells', area: areaAt('A1', 1, 1, 'Shop'), contents: [['Item']] },
        ]),
      );
      await hands.type(areaAt('C7', 1, 1, 'Shop'), [['hers']]);
      await expect(revert.run()).rejects.toThrow('C7 on sheet "Shop" has changed since this was written');
      expect((await workbook.sheets()).map(({ name }) => name)).toEqual(['Parts', 'Shop']);
    });

    it('removes new columns and gives a table its size back', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 2, 2), [
        ['Mark', 'Hole'],
        ['C1', 1],
      ]);
      await hands.addTable('List', areaAt('A1', 2, 2));
      const wider = await workbook.write(
        await workbook.plan([
          { kind: 'column', table: 'List', rightOf: 'Mark', heading: 'Press', contents: ['Bay A'] },
        ]),
      );
      const longer = await workbook.write(
        await workbook.plan([{ kind: 'resize', table: 'List', area: areaAt('A1', 4, 3) }]),
      );
      await longer.run();
      await wider.run();
      expect(await workbook.tables()).toEqual([
        { name: 'List', area: areaAt('A1', 2, 2), headings: ['Mark', 'Hole'], hasTotals: false },
      ]);
      expect(hands.look('Parts', 1, 1).value).toBe(1);
    });

    it('keeps a new column in which somebody has written', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 2, 1), [['Mark'], ['C1']]);
      await hands.addTable('List', areaAt('A1', 2, 1));
      const revert = await workbook.write(
        await workbook.plan([{ kind: 'column', table: 'List', heading: 'Press', contents: ['Bay A'] }]),
      );
      await hands.type(areaAt('B2', 1, 1), [['Bay B']]);
      await expect(revert.run()).rejects.toMatchObject({ trouble: 'changed' });
      expect(hands.look('Parts', 1, 1).value).toBe('Bay B');
    });

    it('removes several columns of one plan, whatever their order, and the cells right of the table stay', async () => {
      const { workbook, hands } = await open();
      await hands.type(areaAt('A1', 2, 3), [
        ['Mark', 'Hole', null],
        ['C1', 1, null],
      ]);
      await hands.addTable('List', areaAt('A1', 2, 2));
      await hands.type(areaAt('E2', 1, 1), [['hers']]);
      const revert = await workbook.write(
        await workbook.plan([
          { kind: 'column', table: 'List', heading: 'Verdict', contents: [{ formula: '=1+1' }] },
          { kind: 'column', table: 'List', rightOf: 'Mark', heading: 'Press', contents: ['Bay A'] },
        ]),
      );
      await revert.run();
      const [read] = await workbook.read([areaAt('A1', 2, 5)], ['values']);
      expect(read?.values).toEqual([
        ['Mark', 'Hole', null, null, null],
        ['C1', 1, null, null, 'hers'],
      ]);
    });

    it('goes on with the rest when it was refused halfway', async () => {
      const { workbook, hands } = await open();
      await hands.addSheet('Shop');
      await hands.type(areaAt('A1', 1, 1, 'Shop'), [['before']]);
      const revert = await workbook.write(
        await workbook.plan([
          { kind: 'cells', area: areaAt('A1', 1, 1, 'Shop'), contents: [['after']] },
          { kind: 'cells', area: areaAt('A1', 1, 1), contents: [['after']] },
        ]),
        { confirmed: true },
      );
      await hands.protect('Shop');
      await expect(revert.run()).rejects.toMatchObject({ trouble: 'protected' });
      expect(hands.look('Parts', 0, 0).value).toBe('');
      expect(hands.look('Shop', 0, 0).value).toBe('after');
      await hands.unprotect('Shop');
      await revert.run();
      expect(hands.look('Shop', 0, 0).value).toBe('before');
    });
  });
}
