import { describe, expect, it } from 'vitest';
import { areaAt, type Open } from './underTest.js';

const list = areaAt('A1', 4, 3);
const subhead = areaAt('A3', 1, 3);

async function openList(open: Open) {
  const { workbook, hands } = await open();
  await hands.type(list, [
    ['Mark', 'Section', 'Hole'],
    ['C1', 'FB 3/8x4', '13/16'],
    ['CATWALK LEVEL 2', null, null],
    ['C2', 'FB 3/8x4', '13/16'],
  ]);
  await hands.merge(subhead);
  return { workbook, hands };
}

export function mergingContract(open: Open): void {
  describe('merged and hidden cells', () => {
    it('are told of the areas asked for: merged ones whole, hidden rows by number', async () => {
      const { workbook, hands } = await openList(open);
      await hands.hide('Parts', [1, 3]);
      expect(await workbook.arrangement([areaAt('B2', 2, 2), areaAt('A1', 1, 3)])).toEqual([
        { merged: [subhead], hidden: [1] },
        { merged: [], hidden: [] },
      ]);
    });

    it('come apart for a table with new columns among them, and are merged again when it is undone', async () => {
      const { workbook, hands } = await openList(open);
      const plan = await workbook.plan([
        { kind: 'unmerge', area: subhead },
        { kind: 'cells', area: areaAt('C2', 3, 1), formats: [['@'], ['@'], ['@']] },
        { kind: 'table', name: 'List', area: list, headings: ['Mark', 'Section', 'Hole'] },
        {
          kind: 'column',
          table: 'List',
          leftOf: 'Section',
          heading: 'Verdict',
          contents: ['OK', null, 'OK'],
        },
        { kind: 'column', table: 'List', heading: 'Note', contents: ['', 'a subhead', ''] },
      ]);
      const revert = await workbook.write(plan, { confirmed: true });
      expect(hands.merged('Parts')).toEqual([]);
      expect(hands.look('Parts', 2, 0).value).toBe('CATWALK LEVEL 2');
      expect(hands.look('Parts', 2, 4).value).toBe('a subhead');
      await revert.run();
      expect(hands.merged('Parts')).toEqual([subhead]);
      expect(hands.look('Parts', 2, 0).value).toBe('CATWALK LEVEL 2');
      expect(hands.look('Parts', 1, 2).value).toBe('13/16');
    });

    it('stay apart where somebody has typed into one of them since', async () => {
      const { workbook, hands } = await openList(open);
      const revert = await workbook.write(await workbook.plan([{ kind: 'unmerge', area: subhead }]));
      await hands.type(areaAt('B3', 1, 1), [['hers']]);
      await expect(revert.run()).rejects.toThrow('B3 on sheet "Parts" has changed since this was written');
      expect(hands.look('Parts', 2, 1).value).toBe('hers');
      expect(hands.merged('Parts')).toEqual([]);
    });

    it('are refused where they are not merged as planned', async () => {
      const { workbook } = await openList(open);
      await expect(workbook.plan([{ kind: 'unmerge', area: areaAt('A3', 1, 2) }])).rejects.toThrow(
        'A3:B3 on sheet "Parts" was changed meanwhile',
      );
    });
  });
}
