import { beforeEach, describe, expect, it } from 'vitest';
import { GridWorkbook } from '../../../src/bench/port/gridWorkbook.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import type { Shop } from '../../../src/core/shop/readShop.js';
import { addChecks } from '../../../src/taskpane/parts/list/addChecks.js';
import { headingsOf, matchColumns } from '../../../src/taskpane/parts/list/columnMatch.js';
import { inputSpan, listFrom, type ListRead } from '../../../src/taskpane/parts/list/listRead.js';
import { fillChecks, rowsWithoutChecks } from '../../../src/taskpane/parts/list/missingChecks.js';
import { readSheetChecks } from '../../../src/taskpane/parts/list/sheetChecks.js';
import { readShopState } from '../../../src/taskpane/shared/readShopState.js';
import type { Proposal } from '../../../src/taskpane/shared/change/proposal.js';
import type { Content } from '../../../src/workbook/content.js';
import type { Workbook } from '../../../src/workbook/port.js';
import type { Step } from '../../../src/workbook/step.js';
import { openExample } from '../../bench/support/openExample.js';
import { MemoryWorkbook } from '../support/memoryWorkbook.js';
import { fillWorkbook, partsHeadings, partsList } from '../support/workbooks.js';

const sheet = 'Takeoff';

async function write(workbook: Workbook, steps: readonly Step[]) {
  return workbook.write(await workbook.plan(steps), { confirmed: true });
}

async function shopOf(workbook: Workbook): Promise<Shop> {
  const state = await readShopState(workbook);
  if (state.kind !== 'ready') throw new Error(`the shop is ${state.kind}`);
  return state.shop;
}

/** A list of the sheet Takeoff with its check columns. */
async function checkedList(workbook: Workbook, rows: number): Promise<void> {
  const area = { sheet, row: 0, column: 0, rows: rows + 1, columns: partsHeadings.length };
  const contents = [partsHeadings, ...partsList(rows)];
  await write(workbook, [
    { kind: 'sheet', name: sheet },
    { kind: 'cells', area, contents },
  ]);
  const [cells] = await workbook.read([area], ['values']);
  const list = listFrom({ key: 'cells', title: '', area }, area, cells?.values ?? [], 0);
  const matches = matchColumns(list.headings, list.rows, await shopOf(workbook));
  await write(workbook, proposed(await addChecks(workbook, list, matches)).steps);
}

function proposed(proposal: Proposal | string): Proposal {
  if (typeof proposal === 'string') throw new Error(proposal);
  return proposal;
}

async function tableOf(workbook: Workbook) {
  const table = (await workbook.tables()).find(({ area }) => area.sheet === sheet);
  if (!table) throw new Error('no table');
  return table;
}

/** The list as the pane reads it, with its checks. */
async function read(workbook: Workbook) {
  const table = await tableOf(workbook);
  const [cells] = await workbook.read([table.area], ['values']);
  const source = { key: '', title: '', area: table.area, table };
  const list: ListRead = listFrom(source, table.area, cells?.values ?? [], 0);
  const checks = await readSheetChecks(workbook, table.area, list.headings);
  if (!checks) throw new Error('no checks');
  const matches = matchColumns(list.headings, list.rows, await shopOf(workbook));
  const span = inputSpan(matches);
  const columns = {
    table: table.name,
    first: span?.first.heading ?? '',
    last: span?.last.heading ?? '',
  };
  const missing = rowsWithoutChecks(list, checks, readHeadings(headingsOf(matches)));
  return { list, checks, missing, fill: fillChecks(list, checks, columns, missing) };
}

/** Rows typed under the list, right of its verdicts; its table grows with them. */
async function typeUnder(workbook: Workbook, rows: readonly (readonly Content[])[]): Promise<void> {
  const { name, area, headings } = await tableOf(workbook);
  const under = {
    ...area,
    row: area.row + area.rows,
    column: area.column + headings.indexOf('Mark'),
    rows: rows.length,
    columns: partsHeadings.length,
  };
  await write(workbook, [
    { kind: 'cells', area: under, contents: rows },
    { kind: 'resize', table: name, area: { ...area, rows: area.rows + rows.length } },
  ]);
}

async function shown(workbook: Workbook, heading: string) {
  const { area, headings } = await tableOf(workbook);
  const [cells] = await workbook.read([area], ['values']);
  return (cells?.values ?? []).slice(1).map((row) => row[headings.indexOf(heading)]);
}

const further: Content[][] = [
  ['GP9', 12, 'PL3/8X8', 'A36', '10-1/2', '13/16', '1 each end', '3/4', '4', '1-1/2', ''],
  ['', '', '', '', '', '', '', '', '', '', ''],
  ['CL9', 24, 'L3X3X3/8', 'A36', '5 1/2"', '13/16', '1 each end', '3/4', '1-1/4', '7/8', ''],
];

const books = [
  ['in memory', () => memoryBook()],
  ['in the grid', async () => new GridWorkbook(openExample().book)],
] as const;

async function memoryBook(): Promise<Workbook> {
  const workbook = new MemoryWorkbook('Sheet1');
  await fillWorkbook(workbook, 'shop');
  return workbook;
}

describe.each(books)('rows of a checked list without checks, %s', (_, open) => {
  let workbook: Workbook;
  beforeEach(async () => {
    workbook = await open();
  });

  it.each([
    ['a formula in each row', 8],
    ['one formula for the list', 504],
  ])('%s: rows added under the list are found, blank ones aside, filled and taken back', async (__, rows) => {
    await checkedList(workbook, rows);
    expect((await read(workbook)).missing).toEqual([]);
    await typeUnder(workbook, further);
    const { missing, fill } = await read(workbook);
    expect(missing).toEqual([rows, rows + 2]);
    expect(fill.title).toBe('Fill the checks of 2 rows');
    const verdicts = await shown(workbook, 'Verdict');
    const before = verdicts.slice(0, rows);
    const revert = await write(workbook, fill.steps);
    const after = await shown(workbook, 'Verdict');
    expect(after.slice(0, rows)).toEqual(before);
    expect([after[rows], after[rows + 2]]).toEqual(['OK', 'Edge short']);
    expect(String((await shown(workbook, 'Note'))[rows + 2])).toContain(
      '7/8 in from the center to the right end is under 1-1/4 in',
    );
    expect((await read(workbook)).missing).toEqual([]);
    await revert.run();
    expect(await shown(workbook, 'Verdict')).toEqual(verdicts);
    expect((await read(workbook)).missing).toEqual([rows, rows + 2]);
  });
});

describe('which rows lack their checks', () => {
  let workbook: MemoryWorkbook;
  beforeEach(async () => {
    workbook = new MemoryWorkbook('Sheet1');
    await fillWorkbook(workbook, 'shop');
    await checkedList(workbook, 8);
  });
  const at = async (heading: string) => (await tableOf(workbook)).headings.indexOf(heading);

  it('a verdict that somebody typed over is one, and only its cell is written', async () => {
    workbook.type(sheet, 3, await at('Verdict'), [['OK']]);
    const { missing, fill } = await read(workbook);
    expect(missing).toEqual([2]);
    expect(fill.title).toBe('Fill the checks of 1 row');
    expect(fill.steps).toMatchObject([
      { kind: 'cells', area: { row: 3, rows: 1, columns: 1 }, contents: [[{}]], formats: [['General']] },
    ]);
    const plan = await workbook.plan(fill.steps);
    expect(plan.overwrites.map(({ holds }) => holds)).toEqual(['OK']);
  });

  it('a share keeps its number format in a new row', async () => {
    const cells = await at('Share of rating');
    workbook.type(sheet, 3, cells, [[null, null]]);
    const { fill } = await read(workbook);
    expect(fill.steps).toHaveLength(1);
    await write(workbook, fill.steps);
    expect(workbook.memory.cell(sheet, 3, cells).format).toBe('0%');
  });

  it('a subtotal without checks is none', async () => {
    const blank = Array.from({ length: partsHeadings.length - 1 }, () => null);
    workbook.type(sheet, 3, 0, [['Subtotal', ...blank]]);
    workbook.type(sheet, 3, await at('Verdict'), [[null, null, null]]);
    expect((await read(workbook)).missing).toEqual([]);
  });

  it('a list whose checks are values only has nothing to fill with', async () => {
    const { area, headings } = await tableOf(workbook);
    workbook.type(
      sheet,
      1,
      await at('Verdict'),
      Array.from({ length: 8 }, () => ['OK', 0.5, 'Understood as: …']),
    );
    expect(await readSheetChecks(workbook, area, headings)).toBeUndefined();
  });

  it('columns that look into another sheet than one with the checks of a list are no checks', async () => {
    const { area, headings } = await tableOf(workbook);
    const formula = "=INDEX('Shop'!$A:$A,ROW()-ROW(Parts[[#Headers],[Mark]])+3)";
    workbook.type(
      sheet,
      1,
      await at('Verdict'),
      Array.from({ length: 8 }, () => [{ formula }, null, null]),
    );
    expect(await readSheetChecks(workbook, area, headings)).toBeUndefined();
  });

  it('formulas that name cells are written by the headings of the table', async () => {
    const { list, checks } = await read(workbook);
    const lacking = list.rows.map(() => null);
    const column = (model: string) => ({ at: 12, model, format: 'General', formulas: lacking });
    const span = { table: 'Parts', first: 'Mark', last: 'Press' };
    const filled = (model: string) =>
      fillChecks(list, { ...checks, columns: [column(model)] }, span, [7]).steps[0];
    expect(filled('=TONROW.ROWCHECK($A$1:$L$1,A2:L2,ShopStamp,"mass")')).toMatchObject({
      area: { row: 8, column: 12, rows: 1, columns: 1 },
      contents: [
        [
          {
            formula:
              '=TONROW.ROWCHECK(Parts[[#Headers],[Mark]:[Press]],Parts[@[Mark]:[Press]],ShopStamp,"mass")',
          },
        ],
      ],
    });
    expect(filled("=INDEX('List check'!$B:$B,ROW()-ROW($A$1)+3)")).toMatchObject({
      contents: [[{ formula: "=INDEX('List check'!$B:$B,ROW()-ROW(Parts[[#Headers],[Mark]])+3)" }]],
    });
  });

  it('the check of the whole list that names cells is written by the name of the table', async () => {
    const { list, checks } = await read(workbook);
    const whole = {
      area: { sheet: 'List check', row: 2, column: 0, rows: 1, columns: 1 },
      formula: '=TONROW.LISTCHECK(Takeoff!A1:L9,ShopStamp,"verdict, use")',
    };
    const span = { table: 'Parts', first: 'Mark', last: 'Press' };
    const [step] = fillChecks(list, { ...checks, whole }, span, [7]).steps;
    expect(step).toMatchObject({
      area: whole.area,
      contents: [[{ formula: '=TONROW.LISTCHECK(Parts[[#All],[Mark]:[Press]],ShopStamp,"verdict, use")' }]],
    });
  });
});

describe('the example', () => {
  it('has ten check columns, and no row without its checks', async () => {
    const workbook = new GridWorkbook(openExample().book);
    const table = (await workbook.tables()).find(({ name }) => name === 'Parts');
    if (!table) throw new Error('no table');
    const checks = await readSheetChecks(workbook, table.area, table.headings);
    const items = checks?.columns.map(({ model }) => /"([a-z]+)"\)$/.exec(model)?.[1]);
    expect(items).toEqual([
      ...['verdict', 'use', 'governs', 'note', 'force', 'hits', 'mass'],
      ...['route', 'minutes', 'cost'],
    ]);
    const [cells] = await workbook.read([table.area], ['values']);
    const list = listFrom(
      { key: '', title: '', area: table.area, table },
      table.area,
      cells?.values ?? [],
      0,
    );
    expect(checks && rowsWithoutChecks(list, checks, readHeadings(table.headings))).toEqual([]);
  });
});
