import { describe, expect, it } from 'vitest';
import type { Change } from '../../../src/workbook/change.js';
import { areaAt, type Open } from './underTest.js';

export function changesContract(open: Open): void {
  describe('changes', () => {
    it.each(['here', 'elsewhere'] as const)(
      'made %s are told with their source and place',
      async (author) => {
        const { workbook, hands } = await open();
        const heard: Change[] = [];
        const stop = await workbook.watch((change) => heard.push(change));
        await hands.edit(areaAt('B3', 1, 1), 'x', author);
        expect(heard).toEqual([{ kind: 'cells', areas: [areaAt('B3', 1, 1)], author, ours: false }]);
        await stop();
      },
    );

    it('made by the add-in itself are told as ours', async () => {
      const { workbook } = await open();
      const heard: Change[] = [];
      const stop = await workbook.watch((change) => heard.push(change));
      await workbook.write(
        await workbook.plan([{ kind: 'cells', area: areaAt('A1', 1, 1), contents: [['x']] }]),
      );
      await expect
        .poll(() => heard)
        .toContainEqual({
          kind: 'cells',
          areas: [areaAt('A1', 1, 1)],
          author: 'here',
          ours: true,
        });
      await stop();
    });

    it('of the selection, of results and of sheets are told', async () => {
      const { workbook, hands } = await open();
      const heard: Change[] = [];
      const stop = await workbook.watch((change) => heard.push(change));
      await hands.select(areaAt('A2', 3, 1));
      await hands.calculate(areaAt('C1', 2, 2));
      await workbook.write(await workbook.plan([{ kind: 'sheet', name: 'Shop' }]));
      await expect.poll(() => heard.length).toBeGreaterThanOrEqual(3);
      expect(heard).toEqual([
        { kind: 'selected', areas: [areaAt('A2', 3, 1)] },
        { kind: 'calculated', areas: [areaAt('C1', 2, 2)] },
        { kind: 'sheets' },
      ]);
      await hands.edit(areaAt('A1', 1, 1, 'Shop'), 'x', 'elsewhere');
      expect(heard.at(-1)).toMatchObject({ kind: 'cells', areas: [areaAt('A1', 1, 1, 'Shop')] });
      await stop();
    });

    it('on a sheet that must be looked up are not told once stopped', async () => {
      const { workbook, hands } = await open();
      const heard: Change[] = [];
      const stop = await workbook.watch((change) => heard.push(change));
      await hands.addSheet('New');
      const edited = hands.edit(areaAt('A1', 1, 1, 'New'), 'x', 'elsewhere');
      // A host that is asked for the name of the sheet has not answered by now.
      await new Promise((resolve) => setImmediate(resolve));
      const toldSoFar = [...heard];
      await stop();
      await edited;
      expect(heard).toEqual(toldSoFar);
    });

    it('are not told after stopping', async () => {
      const { workbook, hands } = await open();
      const heard: Change[] = [];
      const stop = await workbook.watch((change) => heard.push(change));
      await stop();
      await hands.edit(areaAt('B3', 1, 1), 'x', 'elsewhere');
      expect(heard).toEqual([]);
    });
  });
}
