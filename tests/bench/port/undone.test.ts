import { expect, it } from 'vitest';
import { areaAt } from '../../workbook/contract/underTest.js';
import { openGrid } from '../support/gridUnderTest.js';

async function written() {
  const grid = await openGrid();
  const area = areaAt('A1', 2, 1);
  const revert = await grid.workbook.write(
    await grid.workbook.plan([
      { kind: 'cells', area, contents: [['Mark'], ['C1']] },
      { kind: 'table', name: 'List', area },
    ]),
  );
  return { ...grid, area, revert };
}

const undone = {
  trouble: 'undone',
  message: 'This change is undone already.',
};

it('a change that was undone in the grid is not taken back once more, and nothing is touched', async () => {
  const { workbook, book, revert } = await written();
  book.model.dispatch('REQUEST_UNDO');
  await expect(revert.run()).rejects.toMatchObject(undone);
  const area = areaAt('A1', 1, 1);
  await workbook.write(await workbook.plan([{ kind: 'cells', area, contents: [['mine']] }]));
  await expect(revert.run()).rejects.toMatchObject(undone);
  expect((await workbook.read([area], ['values']))[0]?.values).toEqual([['mine']]);
});

it('a change that was undone and done again is taken back', async () => {
  const { workbook, book, revert, area } = await written();
  book.model.dispatch('REQUEST_UNDO');
  book.model.dispatch('REQUEST_REDO');
  await revert.run();
  expect(await workbook.tables()).toEqual([]);
  expect((await workbook.read([area], ['values']))[0]?.values).toEqual([[null], [null]]);
});

it('a table that somebody deleted is still told as missing', async () => {
  const { book, revert } = await written();
  const table = book.tables.find('List');
  book.model.dispatch('REMOVE_TABLE', { sheetId: table?.sheetId ?? '', target: table ? [table.zone] : [] });
  await expect(revert.run()).rejects.toMatchObject({ trouble: 'missing' });
});
