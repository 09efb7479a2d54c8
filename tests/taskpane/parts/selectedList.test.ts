import { beforeEach, describe, expect, it } from 'vitest';
import { addChecks } from '../../../src/taskpane/parts/list/addChecks.js';
import { matchColumns } from '../../../src/taskpane/parts/list/columnMatch.js';
import { headingRowOf } from '../../../src/taskpane/parts/list/headingRow.js';
import { listFrom } from '../../../src/taskpane/parts/list/listRead.js';
import { listSources } from '../../../src/taskpane/parts/list/listSource.js';
import { readShopState } from '../../../src/taskpane/shared/readShopState.js';
import { cellAddress } from '../../../src/workbook/area.js';
import { MemoryWorkbook } from '../support/memoryWorkbook.js';
import { fillWorkbook } from '../support/workbooks.js';

const sheet = 'Sheet1';
const headings = ['Mark', 'Section', 'Grade'];
const rows = [
  ['C1', 'PL3/8X6', 'A36'],
  ['C2', 'L3X3X1/4', 'A36'],
];

let workbook: MemoryWorkbook;
beforeEach(async () => {
  workbook = new MemoryWorkbook(sheet);
  await fillWorkbook(workbook, 'shop');
});

async function select(row: number, column: number, more: { rows?: number; columns?: number } = {}) {
  workbook.select({ sheet, row, column, rows: 1, columns: 1, ...more });
  const { sources, first, refusal } = await listSources(workbook, await readShopState(workbook));
  const source = sources.find(({ key }) => key === first);
  return { title: source?.title, address: source && cellAddress(source.area), source, refusal };
}

function makeTable(name: string, row: number, height: number) {
  const area = { sheet, row, column: 0, rows: height, columns: headings.length };
  workbook.memory.tables.push({ name, area, hasTotals: false });
}

describe('a second list below a table', () => {
  beforeEach(() => {
    workbook.type(sheet, 0, 0, [headings, ...rows]);
    makeTable('ListA', 0, 3);
    workbook.type(sheet, 4, 0, [headings, ...rows, [null, null, null], ['C9', 'PL3/8X6', 'A36']]);
  });

  it('is taken by one of its cells', async () => {
    expect(await select(5, 1)).toMatchObject({ title: 'Cells Sheet1!A5:C9', refusal: undefined });
  });

  it('is taken by a blank cell that nothing adjoins, too', async () => {
    expect((await select(30, 20)).address).toBe('A5:C9');
  });

  it('is not taken by a cell of the table', async () => {
    expect((await select(1, 1)).title).toBe('Table ListA');
  });

  it('is taken by its selected cells, as they were selected', async () => {
    expect((await select(4, 0, { rows: 3, columns: 3 })).title).toBe('Selected cells Sheet1!A5:C7');
  });
});

describe('what is no list', () => {
  it('a note on a sheet whose only list is a table is told in a sentence', async () => {
    workbook.type(sheet, 0, 0, [headings, ...rows]);
    makeTable('ListA', 0, 3);
    workbook.type(sheet, 8, 5, [['mine'], ['too']]);
    const { title, refusal } = await select(8, 5);
    expect(title).toBe('Table ListA');
    expect(refusal).toContain('Around Sheet1!F9 there is no list');
  });

  it("a cell of the shop's tables is none", async () => {
    workbook.select({ sheet: 'Shop', row: 7, column: 1, rows: 1, columns: 1 });
    const { refusal } = await listSources(workbook, await readShopState(workbook));
    expect(refusal).toContain('Around Shop!B8 there is no list');
  });

  it('a title of two rows above a table is none', async () => {
    workbook.type(sheet, 0, 0, [['Catwalk', 'Tower 4'], ['Job', '17'], [null], headings, ...rows]);
    makeTable('ListA', 3, 3);
    expect((await select(0, 0)).title).toBe('Table ListA');
  });

  it('a single row is none', async () => {
    workbook.type(sheet, 0, 0, [headings, ...rows]);
    const { refusal } = await select(1, 0, { columns: 3 });
    expect(refusal).toBe('Sheet1!A2:C2 holds no list: it needs a row of headings and a row below them.');
  });
});

describe('where a list ends', () => {
  it('a note two columns right of a list stays outside its table', async () => {
    workbook.type(sheet, 0, 0, [headings, ...rows]);
    workbook.type(sheet, 1, 6, [['keep me']]);
    for (const selected of [await select(1, 1), await select(0, 0, { rows: 1_048_576, columns: 16_384 })]) {
      const { source } = selected;
      const [cells] = source ? await workbook.read([source.area], ['values']) : [];
      if (!source || !cells) throw new Error('no list');
      const list = listFrom(source, source.area, cells.values, headingRowOf(cells.values));
      expect(cellAddress(list.area)).toBe('A1:C3');
      const state = await readShopState(workbook);
      if (state.kind !== 'ready') throw new Error('no shop');
      const proposal = await addChecks(workbook, list, matchColumns(list.headings, list.rows, state.shop));
      expect(proposal).toContain('The cells right of the list are filled');
    }
  });

  it('a selection of whole columns ends before two blank rows', async () => {
    const gap = [null, null, null];
    workbook.type(sheet, 0, 0, [
      ['Job 4', null, null],
      gap,
      gap,
      headings,
      ...rows,
      gap,
      rows[0] ?? [],
      gap,
      gap,
    ]);
    workbook.type(sheet, 10, 0, [['Checked by', 'me']]);
    expect((await select(0, 0, { rows: 1_048_576, columns: 3 })).address).toBe('A1:C8');
    expect((await select(0, 0, { rows: 11, columns: 3 })).address).toBe('A1:C11');
  });
});
