import { describe, expect, it } from 'vitest';
import type { Change } from '../../../src/workbook/change.js';
import { OpenFields, type FieldsChanged } from '../../../src/workbook/openFields.js';
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

  describe('a press that is open while somebody else changes it', () => {
    const cells = { names: areaAt('A2', 3, 1), values: areaAt('B2', 3, 1) };

    async function openPress() {
      const under = await open();
      await under.hands.type(areaAt('A1', 4, 2), [
        ['Item', 'Bay A'],
        ['Punch force', 60],
        ['Punch throat', 12],
        ['Punch stroke', null],
      ]);
      const heard: FieldsChanged[] = [];
      const press = await OpenFields.open(
        under.workbook,
        cells,
        (changed) => heard.push(changed),
        (error) => {
          throw error;
        },
      );
      return { ...under, ...press, heard };
    }

    it('takes the fields the user has not touched, and says whose they are', async () => {
      const { fields, hands, heard, stop } = await openPress();
      fields.type('Punch throat', 14);
      await hands.edit(areaAt('B2', 1, 1), 66, 'elsewhere');
      expect(heard).toMatchObject([{ author: 'elsewhere', taken: ['Punch force'], conflicts: [] }]);
      expect(fields.current).toEqual({ 'Punch force': 66, 'Punch throat': 14, 'Punch stroke': null });
      await stop();
    });

    it("keeps the user's own where both changed a field, and shows both", async () => {
      const { fields, hands, heard, stop } = await openPress();
      fields.type('Punch throat', 14);
      await hands.edit(areaAt('B3', 1, 1), 10, 'elsewhere');
      expect(heard[0]?.conflicts).toEqual([{ field: 'Punch throat', base: 12, mine: 14, theirs: 10 }]);
      expect(fields.current['Punch throat']).toBe(14);
      await stop();
    });

    it('shows a conflict once, and merges later changes into what came of it', async () => {
      const { fields, hands, heard, stop } = await openPress();
      fields.type('Punch throat', 14);
      await hands.edit(areaAt('B3', 1, 1), 10, 'elsewhere');
      await hands.edit(areaAt('B4', 1, 1), 3, 'elsewhere');
      expect(heard).toHaveLength(2);
      expect(heard[1]).toMatchObject({ taken: ['Punch stroke'], conflicts: [] });
      expect(fields.current).toEqual({ 'Punch force': 60, 'Punch throat': 14, 'Punch stroke': 3 });
      await stop();
    });

    it('says nothing of changes elsewhere on the sheet', async () => {
      const { hands, heard, stop } = await openPress();
      await hands.edit(areaAt('D9', 1, 1), 'x', 'elsewhere');
      expect(heard).toEqual([]);
      await stop();
    });
  });
}
