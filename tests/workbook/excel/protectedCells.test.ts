import { describe, expect, it } from 'vitest';
import type { Step } from '../../../src/workbook/step.js';
import { areaAt } from '../contract/underTest.js';
import { openOffice } from '../support/officeUnderTest.js';

/** A protected sheet whose cells B2:B4 alone may be written, as forms are made. */
async function openForm() {
  const under = await openOffice();
  const sheet = under.host.book.sheet('Parts');
  sheet.enter(1, 1, 'hers');
  sheet.protected = true;
  sheet.unlock(areaAt('B2', 3, 1));
  const held = () => sheet.rows(areaAt('A1', 4, 2), ({ value }) => value).flat();
  return { ...under, held };
}

const cells = (address: string, ...contents: string[]): Step => ({
  kind: 'cells',
  area: areaAt(address, contents.length, 1),
  contents: contents.map((each) => [each]),
});

describe('a protected sheet with cells that may be written', () => {
  it('takes what is written into them, and gives it back', async () => {
    const { workbook, held } = await openForm();
    const before = held();
    const plan = await workbook.plan([cells('B2', 'a', 'b', 'c')]);
    expect(plan.protectedSheets.map(({ name }) => name)).toEqual(['Parts']);
    const revert = await workbook.write(plan, { confirmed: true });
    expect(held()).toEqual(['', '', '', 'a', '', 'b', '', 'c']);
    await revert.run();
    expect(held()).toEqual(before);
  });

  it.each<[string, Step[]]>([
    ['one locked cell among them', [cells('B2', 'a', 'b', 'c', 'd')]],
    ['a locked cell after them', [cells('B2', 'a'), cells('A1', 'x')]],
    ['a table', [cells('B3', 'a'), { kind: 'table', name: 'T', area: areaAt('B2', 2, 1) }]],
  ])('takes nothing of a change with %s', async (_, steps) => {
    const { workbook, host, held } = await openForm();
    const before = held();
    const plan = await workbook.plan(steps);
    await expect(workbook.write(plan, { confirmed: true })).rejects.toMatchObject({ trouble: 'protected' });
    expect(held()).toEqual(before);
    expect(host.book.tables).toEqual([]);
  });

  it('says what could not be taken back where the cells were locked meanwhile', async () => {
    const { workbook, host, held } = await openForm();
    const plan = await workbook.plan([cells('B2', 'a')]);
    const revert = await workbook.write(plan, { confirmed: true });
    host.book.sheet('Parts').lockAll();
    await expect(revert.run()).rejects.toMatchObject({ trouble: 'protected' });
    expect(held()[3]).toBe('a');
    host.book.sheet('Parts').protected = false;
    await revert.run();
    expect(held()[3]).toBe('hers');
  });
});
