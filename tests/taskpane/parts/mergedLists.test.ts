import { beforeAll, describe, expect, it } from 'vitest';
import type { Shop } from '../../../src/core/shop/readShop.js';
import { addChecks } from '../../../src/taskpane/parts/list/addChecks.js';
import { matchColumns } from '../../../src/taskpane/parts/list/columnMatch.js';
import { headingRowOf } from '../../../src/taskpane/parts/list/headingRow.js';
import { listFrom } from '../../../src/taskpane/parts/list/listRead.js';
import { describeSteps } from '../../../src/taskpane/shared/change/describeStep.js';
import { starterShop } from '../../../src/taskpane/shop/sheet/starterShop.js';
import { GridWorkbook } from '../../../src/bench/port/gridWorkbook.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { openGrid } from '../../bench/support/gridUnderTest.js';
import { openOffice } from '../../workbook/support/officeUnderTest.js';
import { areaAt, type UnderTest } from '../../workbook/contract/underTest.js';

let shop: Shop;
beforeAll(() => {
  shop = starterShop('in');
});

const head = ['Mark', 'Qty', 'Section', 'Grade', 'Length'];
const part = (mark: string | null) => [mark, 2, 'FB 3/8x4', 'A36', '12'];

/** What is merged in a list, its cells, and what is merged afterwards. */
const lists: { name: string; rows: (string | number | null)[][]; merged: string[]; stays: string[] }[] = [
  {
    name: 'a subhead over the whole width',
    rows: [head, part('C1'), ['CATWALK LEVEL 2', null, null, null, null], part('C2')],
    merged: ['A3:E3'],
    stays: [],
  },
  {
    name: 'a subhead over a part of the width',
    rows: [head, part('C1'), ['HANDRAIL', null, null, null, null], part('C2')],
    merged: ['A3:C3'],
    stays: [],
  },
  {
    name: 'a title above the headings',
    rows: [['Grain tower, catwalks', null, null, null, null], head, part('C1'), part('C2')],
    merged: ['A1:E1'],
    stays: ['A1:E1'],
  },
  {
    name: 'two rows of headings with groups over columns and headings over both rows',
    rows: [
      ['Mark', 'Qty', 'Section', 'Grade', 'Hole', null],
      [null, null, null, null, 'Dia', 'Edge'],
      ['C1', 2, 'FB 3/8x4', 'A36', '13/16', '2'],
      ['C2', 2, 'FB 3/8x4', 'A36', '13/16', '2'],
    ],
    merged: ['A1:A2', 'B1:B2', 'C1:C2', 'D1:D2', 'E1:F1'],
    stays: ['E1:F1'],
  },
  {
    name: 'a mark over two rows',
    rows: [head, part('C1'), part(null), part('C2')],
    merged: ['A2:A3'],
    stays: [],
  },
];

function areaOf(address: string) {
  const [from = 'A1', to = from] = address.split(':');
  const [a, b] = [areaAt(from, 1, 1), areaAt(to, 1, 1)];
  return { ...a, rows: b.row - a.row + 1, columns: b.column - a.column + 1 };
}

async function added({ workbook, hands }: UnderTest, { rows, merged }: (typeof lists)[number]) {
  const area = areaAt('A1', rows.length, rows[0]?.length ?? 0);
  await hands.type(
    area,
    rows.map((row) => row.map((cell) => (typeof cell === 'string' ? `'${cell}` : cell))),
  );
  for (const address of merged) await hands.merge(areaOf(address));
  const [read] = await workbook.read([area], ['values']);
  const values = read?.values ?? [];
  const list = listFrom({ key: 'cells', title: '', area }, area, values, headingRowOf(values));
  const matches = matchColumns(list.headings, list.rows, shop, list.written);
  const proposal = await addChecks(workbook, list, matches);
  if (typeof proposal === 'string') throw new Error(proposal);
  const revert = await workbook.write(await workbook.plan(proposal.steps), { confirmed: true });
  return { proposal, revert, area };
}

const kinds = [
  ['in the host', () => openOffice()],
  ['in the grid', () => openGrid()],
] as const;

describe.each(kinds)('check columns %s', (_where, open) => {
  it.each(lists)('beside $name', async (list) => {
    const under = await open();
    const { proposal, revert, area } = await added(under, list);
    const { workbook, hands } = under;
    const [table] = await workbook.tables();
    expect(table?.headings).toEqual(expect.arrayContaining(['Verdict', 'Note', 'Section']));
    expect(hands.merged('Parts').map(({ rows, row }) => ({ rows, row }))).toEqual(
      list.stays.map(areaOf).map(({ rows, row }) => ({ rows, row })),
    );
    const apart = list.merged.length > list.stays.length;
    expect(describeSteps(proposal.steps).some((line) => line.includes('no longer merged'))).toBe(apart);
    expect(proposal.remarks?.some((line) => line.includes('Undo merges'))).toBe(apart);

    await revert.run();
    const [back] = await workbook.read([area], ['values']);
    expect(back?.values).toEqual(list.rows);
    expect(await workbook.tables()).toEqual([]);
    const order = (areas: readonly object[]) => areas.map((each) => JSON.stringify(each)).sort();
    expect(order(hands.merged('Parts'))).toEqual(order(list.merged.map(areaOf)));
  });

  it('leave the row of a merged title alone', async () => {
    const under = await open();
    await added(under, lists[0] as (typeof lists)[number]);
    const [table] = await under.workbook.tables();
    const at = (heading: string) => (table?.headings.indexOf(heading) ?? 0) + (table?.area.column ?? 0);
    const held = (row: number) =>
      ['Verdict', 'Share of rating', 'Note'].map(
        (heading) => under.hands.look('Parts', row, at(heading)).formula,
      );
    expect(held(1).every((formula) => formula !== undefined)).toBe(true);
    expect(held(2)).toEqual([undefined, undefined, undefined]);
  });
});

it('merged cells across frozen columns are merged again too', async () => {
  const { hands, book } = await openGrid();
  const workbook = new GridWorkbook(book);
  await hands.type(areaAt('A1', 1, 1), [['LEVEL 2']]);
  await hands.merge(areaOf('A1:E1'));
  const values: CellValue[][] = [['LEVEL 2', null, null, null, null]];
  const revert = await workbook.write(await workbook.plan([{ kind: 'unmerge', area: areaOf('A1:E1') }]));
  expect(hands.merged('Parts')).toEqual([]);
  book.model.dispatch('FREEZE_COLUMNS', { sheetId: 'parts', quantity: 2 });
  await revert.run();
  expect(hands.merged('Parts')).toEqual([areaOf('A1:E1')]);
  expect(book.getters.getPaneDivisions('parts').xSplit).toBe(2);
  const [read] = await workbook.read([areaOf('A1:E1')], ['values']);
  expect(read?.values).toEqual(values);
});

it('a list keeps its look: no style of the table on it, and new columns have the borders beside them', async () => {
  const { workbook, hands, book } = await openGrid();
  const border = { bottom: { style: 'thick' as const, color: '#000000' } };
  for (let col = 0; col < 5; col += 1)
    book.model.dispatch('SET_BORDER', { sheetId: 'parts', col, row: 0, border });
  await added({ workbook, hands }, { name: '', rows: [head, part('C1')], merged: [], stays: [] });
  const [table] = await workbook.tables();
  const columns = table?.headings.map((_, col) => col) ?? [];
  expect(columns.length).toBeGreaterThan(8);
  for (const col of columns)
    expect(book.getters.getCellBorder({ sheetId: 'parts', col, row: 0 })?.bottom?.style).toBe('thick');
  const [grid] = book.getters.getCoreTables('parts');
  expect(grid?.config).toMatchObject({ styleId: 'TableStyleLight1', bandedRows: false });

  const office = await openOffice();
  await added(office, { name: '', rows: [head, part('C1')], merged: [], stays: [] });
  expect(office.host.book.tables[0]).toMatchObject({ style: 'TableStyleLight1', isBanded: false });
});
