import { beforeAll, describe, expect, it } from 'vitest';
import { GridWorkbook } from '../../../src/bench/port/gridWorkbook.js';
import type { Shop } from '../../../src/core/shop/readShop.js';
import { addChecks } from '../../../src/taskpane/parts/list/addChecks.js';
import { checkRows } from '../../../src/taskpane/parts/list/checkRows.js';
import { headingsOf, matchColumns } from '../../../src/taskpane/parts/list/columnMatch.js';
import { listFrom, type ListRead } from '../../../src/taskpane/parts/list/listRead.js';
import { listSources } from '../../../src/taskpane/parts/list/listSource.js';
import { readCheckedLists } from '../../../src/taskpane/shared/checkedLists.js';
import { readShopState } from '../../../src/taskpane/shared/readShopState.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { openExample } from '../../bench/support/openExample.js';
import { partsHeadings, partsList } from '../support/workbooks.js';

let workbook: GridWorkbook;
let shop: Shop;
beforeAll(async () => {
  workbook = new GridWorkbook(openExample().book);
  const state = await readShopState(workbook);
  if (state.kind !== 'ready') throw new Error(`the shop is ${state.kind}`);
  ({ shop } = state);
});

/** What the pane says of a list, row by row. */
async function inPane(list: ListRead): Promise<CellValue[]> {
  const matches = matchColumns(list.headings, list.rows, shop);
  const results = await checkRows(headingsOf(matches), list.rows, shop, {});
  return (results ?? []).map((result) => (result.blank ? '' : result.verdict));
}

const verdictsOf = ([headings = [], ...rows]: CellValue[][]) =>
  rows.map((row) => row[headings.indexOf('Verdict')] ?? '');

describe('the pane and the functions in the grid say the same', () => {
  it('of the example quote, whose shop cell the pane reads', async () => {
    const state = await readShopState(workbook);
    const { sources, first } = await listSources(workbook, state);
    const source = sources.find(({ key }) => key === first);
    if (!source) throw new Error('no list in the example');
    const [cells] = await workbook.read([source.area], ['values']);
    const values = cells?.values ?? [];
    expect(state).toMatchObject({ shown: shop.stamp, problems: [] });
    expect(await inPane(listFrom(source, source.area, values, 0))).toEqual(verdictsOf(values));
    const [checked] = await readCheckedLists(workbook);
    const words = verdictsOf(values).filter((word) => word !== '');
    const count = (...of: string[]) => words.filter((word) => of.includes(String(word))).length;
    const unknown = count('Not checked', 'Check input', 'OK so far');
    const passed = count('OK', 'Near limit', 'Off press');
    const rows = { rows: words.length, unknown, failing: words.length - unknown - passed };
    expect(checked).toMatchObject({ table: 'Parts', ...rows, errors: 0 });
  });

  it.each([
    ['a formula in each row', 24],
    ['one formula for the list', 504],
  ])('of a new list, %s', async (_, rows) => {
    const sheet = `List of ${rows}`;
    const area = { sheet, row: 0, column: 0, rows: rows + 1, columns: partsHeadings.length };
    const contents = [partsHeadings, ...partsList(rows)];
    await workbook.write(
      await workbook.plan([
        { kind: 'sheet', name: sheet },
        { kind: 'cells', area, contents },
      ]),
    );
    const [cells] = await workbook.read([area], ['values']);
    const list = listFrom({ key: 'cells', title: '', area }, area, cells?.values ?? [], 0);
    const proposal = await addChecks(workbook, list, matchColumns(list.headings, list.rows, shop));
    if (typeof proposal === 'string') throw new Error(proposal);
    const added = await workbook.write(await workbook.plan(proposal.steps), { confirmed: true });
    const table = (await workbook.tables()).find((each) => each.area.sheet === sheet);
    const [checked] = await workbook.read([{ table: table?.name ?? '' }], ['values']);
    const words = verdictsOf(checked?.values ?? []);
    expect(words.slice(0, 4)).toEqual(['OK', 'Edge short', 'OK', 'Hole too small']);
    expect(words).toEqual(await inPane(list));

    await added.run();
    const [back] = await workbook.read([area], ['values']);
    expect(back?.values).toEqual(cells?.values);
    expect((await workbook.tables()).some((each) => each.area.sheet === sheet)).toBe(false);
  });
});
