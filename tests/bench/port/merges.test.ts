import { expect, it } from 'vitest';
import { areaAt } from '../../workbook/contract/underTest.js';
import { cell } from '../support/openExample.js';
import { openGrid } from '../support/gridUnderTest.js';

const subhead = areaAt('A2', 1, 3);

async function withSubhead(align: 'center' | 'right') {
  const { workbook, book, hands } = await openGrid();
  await hands.type(subhead, [['HANDRAIL', null, null]]);
  await hands.merge(subhead);
  const at = cell(book, 'Parts', 'A2');
  book.model.dispatch('UPDATE_CELL', { ...at, style: { align, bold: true } });
  return { workbook, style: () => book.getters.getCellStyle(at) };
}

it('a centered subhead begins at its cell when it is taken apart, and is centered again when that is undone', async () => {
  const { workbook, style } = await withSubhead('center');
  const revert = await workbook.write(await workbook.plan([{ kind: 'unmerge', area: subhead }]));
  expect(style()).toMatchObject({ align: 'left', bold: true });
  await revert.run();
  expect(style()).toMatchObject({ align: 'center', bold: true });
});

it('a subhead that is not centered keeps its place', async () => {
  const { workbook, style } = await withSubhead('right');
  await workbook.write(await workbook.plan([{ kind: 'unmerge', area: subhead }]));
  expect(style()).toMatchObject({ align: 'right' });
});
