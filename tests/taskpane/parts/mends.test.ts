import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { checkRow } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { headingsOf, matchColumns } from '../../../src/taskpane/parts/list/columnMatch.js';
import { failGroups } from '../../../src/taskpane/parts/list/failGroups.js';
import { listFrom } from '../../../src/taskpane/parts/list/listRead.js';
import { mendsOf } from '../../../src/taskpane/parts/list/mends.js';
import { starterShop } from '../../../src/taskpane/shop/sheet/starterShop.js';
import { MemoryWorkbook } from '../support/memoryWorkbook.js';

const shop = starterShop('in');
const headings = ['Mark', 'Section', 'Grade', 'Length', 'Hole', 'Holes', 'Bolt', 'Edge', 'End', 'Press'];

/** A list of rows as a table of the sheet, and what would mend its first group of failing rows. */
async function opened(rows: CellValue[][]) {
  const workbook = new MemoryWorkbook('Sheet1').type('Sheet1', 0, 0, [headings, ...rows]);
  const area = { sheet: 'Sheet1', row: 0, column: 0, rows: rows.length + 1, columns: headings.length };
  workbook.memory.tables.push({ name: 'Parts', area, hasTotals: false });
  const check = async () => {
    const [table] = await workbook.tables();
    if (!table) throw new Error('no table');
    const [cells] = await workbook.read([table.area], ['values']);
    const source = { key: '', title: '', area: table.area, table };
    const list = listFrom(source, table.area, cells?.values ?? [], 0);
    const matches = matchColumns(list.headings, list.rows, shop);
    const read = readHeadings(headingsOf(matches));
    const results = list.rows.map((row) => checkRow(row, read, shop));
    return { list, matches, results };
  };
  const { list, matches, results } = await check();
  const [group] = failGroups(results, shop.unit);
  const finding = group?.worstOf.get(group.rows[0] ?? -1);
  if (!group || !finding) throw new Error('nothing fails');
  const mends = mendsOf(list, matches, group.rows, finding, shop);
  const apply = async (title: string) => {
    const mend = mends.find((each) => each.title === title);
    if (!mend) throw new Error(`no change "${title}" among ${mends.map((each) => each.title).join('; ')}`);
    await workbook.write(await workbook.plan(mend.steps), { confirmed: true });
    return (await check()).results.map((result) => (result.blank ? '' : result.verdict));
  };
  const verdicts = results.map((result) => (result.blank ? '' : result.verdict));
  return { verdicts, titles: mends.map(({ title }) => title), apply };
}

const row = (change: Record<string, CellValue>): CellValue[] => {
  const usual: Record<string, CellValue> = {
    ...{ Mark: 'P1', Section: 'PL3/8X6', Grade: 'A36', Length: '12', Hole: '13/16', Holes: '1 each end' },
    ...{ Bolt: '3/4', Edge: '3', End: '2', Press: 'Bay A' },
  };
  return headings.map((heading) => ({ ...usual, ...change })[heading] ?? null);
};

describe('a distance that is too short', () => {
  it('is made as large as the row needs, in that row alone, and the row then passes', async () => {
    const { verdicts, titles, apply } = await opened([row({}), row({ Mark: 'P2', End: '7/8' })]);
    expect(verdicts).toEqual(['OK', 'Edge short']);
    expect(titles).toEqual(['Make End 1-1/4 in']);
    expect(await apply('Make End 1-1/4 in')).toEqual(['OK', 'OK']);
  });

  it('is counted where several rows have it', async () => {
    const { titles } = await opened([row({ End: '7/8' }), row({ Mark: 'P2', End: '7/8' })]);
    expect(titles).toEqual(['Make End 1-1/4 in (2 rows)']);
  });

  it('is named by the column that gives it', async () => {
    const { titles, apply } = await opened([row({ Edge: '7/8' })]);
    expect(titles).toEqual(['Make Edge 1-1/4 in']);
    expect(await apply('Make Edge 1-1/4 in')).toEqual(['OK']);
  });
});

describe('holes that the press cannot punch', () => {
  it('are drilled: the list gets a column for it, which leaves the other rows alone', async () => {
    const { verdicts, titles, apply } = await opened([
      row({}),
      row({ Section: 'PL1/2X6', Bolt: 'none', Hole: '3/8' }),
    ]);
    expect(verdicts).toEqual(['OK', 'Hole too small']);
    expect(titles).toEqual(['Drill its holes']);
    const after = await apply('Drill its holes');
    expect(after[0]).toBe('OK');
    expect(after[1]).not.toBe('Hole too small');
  });
});

describe('what no cell would mend', () => {
  it('has no change', async () => {
    expect(
      (await opened([row({ Section: 'L3X3X1/4', Hole: null, Holes: null, Bolt: null })])).titles,
    ).toEqual([]);
  });
});
