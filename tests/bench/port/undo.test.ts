import { expect, it } from 'vitest';
import { areaAt } from '../../workbook/contract/underTest.js';
import type { Change } from '../../../src/workbook/change.js';
import { openGrid } from '../support/gridUnderTest.js';

it('takes back everything one plan wrote with one undo of the grid, and tells of it', async () => {
  const { workbook, book } = await openGrid();
  const area = areaAt('A1', 2, 2);
  const heard: Change[] = [];
  await workbook.write(
    await workbook.plan([
      {
        kind: 'cells',
        area,
        contents: [
          ['Mark', 'Qty'],
          ['C1', 4],
        ],
      },
      { kind: 'table', name: 'List', area },
      { kind: 'name', name: 'Here', area: areaAt('B2', 1, 1) },
    ]),
  );
  const stop = await workbook.watch((change) => heard.push(change));
  book.model.dispatch('REQUEST_UNDO');
  expect((await workbook.read([{ usedOf: 'Parts' }], ['values']))[0]?.values).toEqual([]);
  expect(await workbook.tables()).toEqual([]);
  expect(await workbook.names()).toEqual([]);
  await expect
    .poll(() => heard)
    .toContainEqual({ kind: 'cells', areas: [area], author: 'here', ours: false });
  await stop();
});
