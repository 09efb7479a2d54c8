import { beforeEach, describe, expect, it } from 'vitest';
import { type Finding, refusal } from '../../../src/core/check/finding.js';
import type { RowResult } from '../../../src/core/row/rowResult.js';
import { rowItems } from '../../../src/core/row/rowItem.js';
import { checkRow } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { shownItem } from '../../../src/functions/row/shownItem.js';
import { ShownRow } from '../../../src/functions/row/shownRow.js';
import { readShopState } from '../../../src/taskpane/shared/readShopState.js';
import type { Proposal } from '../../../src/taskpane/shared/change/proposal.js';
import { starterShop } from '../../../src/taskpane/shop/sheet/starterShop.js';
import { addChecks, listCheckFrom } from '../../../src/taskpane/parts/list/addChecks.js';
import { addColumns, itemsToAdd } from '../../../src/taskpane/parts/list/addColumns.js';
import { readSheetChecks } from '../../../src/taskpane/parts/list/sheetChecks.js';
import { checkRows } from '../../../src/taskpane/parts/list/checkRows.js';
import { asItStands, headingsOf, matchColumns } from '../../../src/taskpane/parts/list/columnMatch.js';
import { comparePresses } from '../../../src/taskpane/parts/list/comparePresses.js';
import { failGroups, runsOf } from '../../../src/taskpane/parts/list/failGroups.js';
import { dateCells, fixDates, setPress } from '../../../src/taskpane/parts/list/groupChanges.js';
import { listFrom } from '../../../src/taskpane/parts/list/listRead.js';
import { headingRowOf } from '../../../src/taskpane/parts/list/headingRow.js';
import { listSources } from '../../../src/taskpane/parts/list/listSource.js';
import { MemoryWorkbook } from '../support/memoryWorkbook.js';
import { fillWorkbook } from '../support/workbooks.js';

let workbook: MemoryWorkbook;
beforeEach(() => {
  workbook = new MemoryWorkbook('Sheet1');
});

async function open(kind: string) {
  await fillWorkbook(workbook, kind);
  return read();
}

async function read() {
  const state = await readShopState(workbook);
  if (state.kind !== 'ready') throw new Error(`the shop is ${state.kind}`);
  const { sources, first } = await listSources(workbook, state);
  const source = sources.find(({ key }) => key === first);
  const [cells] = source ? await workbook.read([source.area], ['values']) : [];
  if (!source || !cells) throw new Error('no list');
  const list = listFrom(source, cells.area, cells.values, source.table ? 0 : headingRowOf(cells.values));
  return { list, shop: state.shop, matches: matchColumns(list.headings, list.rows, state.shop) };
}

async function write(proposal: Proposal | string) {
  if (typeof proposal === 'string') throw new Error(proposal);
  return workbook.write(await workbook.plan(proposal.steps), { confirmed: true });
}

const column = (table: string, heading: string) => {
  const [headings = [], ...rows] = workbook.shown(table);
  return rows.map((row) => row[headings.indexOf(heading)]);
};

describe('finding the list', () => {
  it('one selected cell stands for all that its sheet holds', async () => {
    const { list } = await open('shop+list8');
    expect(list.area).toMatchObject({ sheet: 'Sheet1', row: 2, rows: 9, columns: 11 });
    expect(list.rows).toHaveLength(8);
  });

  it('several selected cells are the list; whole columns end where the sheet does', async () => {
    await fillWorkbook(workbook, 'shop+list8');
    workbook.select({ sheet: 'Sheet1', row: 0, column: 0, rows: 1_048_576, columns: 4 });
    const { list } = await read();
    expect(list.area).toMatchObject({ row: 2, rows: 9, columns: 4 });
  });

  it("the shop's own tables are no lists", async () => {
    await fillWorkbook(workbook, 'shop');
    const state = await readShopState(workbook);
    expect((await listSources(workbook, state)).sources).toEqual([]);
  });
});

describe('adding checks', () => {
  it('to cells: they become a table with text inputs, Press, and one ROWCHECK a row and column', async () => {
    const { list, matches, shop } = await open('shop+list16');
    await write(await addChecks(workbook, list, matches));
    const [headings = []] = workbook.shown('Parts');
    expect(headings).toEqual([
      ...[
        'Verdict',
        'Mark',
        'Quantity',
        'Profile',
        'Grade',
        'Len',
        'Hole dia',
        'No. of holes',
        'Bolt size',
        'Edge',
        'End',
      ],
      // What a remark says is checked with its row.
      ...['Remarks', 'Press', 'Share of rating', 'Note'],
    ]);
    expect(workbook.memory.cell('Sheet1', 3, 0).content).toEqual({
      formula:
        '=TONROW.ROWCHECK(Parts[[#Headers],[Mark]:[Press]],Parts[@[Mark]:[Press]],ShopStamp,"verdict")',
    });
    const read = readHeadings(headingsOf(matches));
    const expected = list.rows.map((row) => checkRow(row, read, shop));
    expect(column('Parts', 'Verdict')).toEqual(expected.map((row) => (row.blank ? '' : row.verdict)));
    expect(workbook.memory.cell('Sheet1', 3, 6).format).toBe('@');
    expect(workbook.memory.cell('Sheet1', 3, 7).format).toBe('General');
  });

  it('to a table: columns are added, and what stood right of the inputs stays', async () => {
    await fillWorkbook(workbook, 'shop');
    workbook.type('Sheet1', 0, 0, [
      ['Mark', 'Section', 'Grade', 'Length', 'Price'],
      ['C1', 'PL3/8X6', 'A36', '12', 12.5],
    ]);
    workbook.memory.tables.push({
      name: 'Bars',
      area: { sheet: 'Sheet1', row: 0, column: 0, rows: 2, columns: 5 },
      hasTotals: false,
    });
    const { list, matches } = await read();
    const revert = await write(await addChecks(workbook, list, matches));
    expect(workbook.shown('Bars')[0]).toEqual([
      ...['Verdict', 'Mark', 'Section', 'Grade', 'Length', 'Press', 'Price', 'Share of rating', 'Note'],
    ]);
    expect(column('Bars', 'Verdict')).toEqual(['OK']);
    expect(column('Bars', 'Price')).toEqual([12.5]);
    await revert.run();
    expect(workbook.shown('Bars')).toEqual([
      ['Mark', 'Section', 'Grade', 'Length', 'Price'],
      ['C1', 'PL3/8X6', 'A36', '12', 12.5],
    ]);
  });

  it(`from ${listCheckFrom} rows on there is one LISTCHECK, and the columns look into it`, async () => {
    const { list, matches } = await open(`shop+list${listCheckFrom}`);
    await write(await addChecks(workbook, list, matches));
    expect(workbook.memory.cell('List check', 2, 0).content).toEqual({
      formula: '=TONROW.LISTCHECK(Parts[[#All],[Mark]:[Press]],ShopStamp,"verdict, use, note")',
    });
    expect(workbook.memory.cell('Sheet1', 4, 0).content).toEqual({
      formula: "=INDEX('List check'!$A:$A,ROW()-ROW(Parts[[#Headers],[Mark]])+3)",
    });
    expect(column('Parts', 'Verdict').slice(0, 4)).toEqual(['OK', 'Edge short', 'OK', 'Hole too small']);
  });

  it('the columns that are chosen stand right of the usual ones, in one order, each with its format', async () => {
    await fillWorkbook(workbook, 'shop+clips');
    const { list, matches } = await read();
    await write(await addChecks(workbook, list, matches, ['cost', 'press', 'minutes']));
    const [headings = []] = workbook.shown('Parts');
    expect(headings.slice(5)).toEqual([
      ...['Press', 'Share of rating', 'Note', 'Press chosen', 'Minutes', 'Cost'],
    ]);
    const formats = [8, 9, 10].map((at) => workbook.memory.cell('Sheet1', 2, at).format);
    expect(formats).toEqual(['General', '0.0', '0.00']);
    expect(column('Parts', 'Press chosen')).toEqual(['Bay A', 'Bay A', 'Bay A']);
    expect(column('Parts', 'Minutes')).toEqual(['', expect.any(Number), '']);
    expect(workbook.memory.cell('Sheet1', 2, 9).content).toEqual({
      formula:
        '=TONROW.ROWCHECK(Parts[[#Headers],[Mark]:[Press]],Parts[@[Mark]:[Press]],ShopStamp,"minutes")',
    });
  });

  it('one call for the list has the chosen columns too, and they are looked up in it', async () => {
    const { list, matches } = await open(`shop+list${listCheckFrom}`);
    await write(await addChecks(workbook, list, matches, ['route']));
    expect(workbook.memory.cell('List check', 2, 0).content).toEqual({
      formula: '=TONROW.LISTCHECK(Parts[[#All],[Mark]:[Press]],ShopStamp,"verdict, use, note, route")',
    });
    expect(column('Parts', 'Route')[0]).toBe('shear, punch');
  });

  it.each([
    ['a formula in each row', 16, '=TONROW.ROWCHECK('],
    ['one formula for the list', listCheckFrom, "=INDEX('List check'!$D:$D,"],
  ])('more columns are added to checks that stand on the sheet as %s', async (_, rows, formula) => {
    const first = await open(`shop+list${rows}`);
    await write(await addChecks(workbook, first.list, first.matches));
    const again = async () => {
      const { list, matches } = await read();
      const checks = await readSheetChecks(workbook, list.area, list.headings);
      if (!checks) throw new Error('no checks');
      return { list: { ...list, checks }, matches: matches.map(asItStands), checks };
    };
    const { list, matches, checks } = await again();
    expect(itemsToAdd(checks).map(({ item }) => item)).toContain('route');
    const before = column('Parts', 'Verdict');
    await write(await addColumns(workbook, list, matches, ['minutes', 'route']));
    expect(workbook.shown('Parts')[0]?.slice(-3)).toEqual(['Note', 'Route', 'Minutes']);
    expect(column('Parts', 'Verdict')).toEqual(before);
    expect(column('Parts', 'Route')[0]).toBe('shear, punch');
    expect(column('Parts', 'Minutes')[0]).toEqual(expect.any(Number));
    const { area } = list;
    const cell = workbook.memory.cell(area.sheet, area.row + 1, area.column + area.columns);
    expect(JSON.stringify(cell.content)).toContain(formula);
    expect(itemsToAdd((await again()).checks).map(({ item }) => item)).not.toContain('route');
  });

  it('no check column is taken for an input, however its heading begins', () => {
    const shop = starterShop('in');
    const matches = matchColumns(
      rowItems.map(({ heading }) => heading),
      [],
      shop,
    );
    expect(matches.filter(({ field }) => field !== undefined)).toEqual([]);
  });

  it('one row fewer has a formula in each row', async () => {
    const { list, matches } = await open(`shop+list${listCheckFrom - 1}`);
    const proposal = await addChecks(workbook, list, matches);
    expect(typeof proposal === 'string' || proposal.steps.some(({ kind }) => kind === 'sheet')).toBe(false);
  });

  it('is refused with a sentence where the cells beside the list are filled', async () => {
    await fillWorkbook(workbook, 'shop+list8');
    workbook.type('Sheet1', 5, 12, [['mine']]);
    workbook.select({ sheet: 'Sheet1', row: 2, column: 0, rows: 9, columns: 11 });
    const { list, matches } = await read();
    expect(await addChecks(workbook, list, matches)).toBe(
      'The cells right of the list are filled: M6. Make room for 4 columns, or make the list a table on the sheet.',
    );
  });

  it('headings with signs of their own are escaped in the formulas', async () => {
    await fillWorkbook(workbook, 'shop');
    workbook.type('Sheet1', 0, 0, [
      ['Length [mm]', 'Section', 'Grade'],
      [300, 'PL3/8X6', 'A36'],
    ]);
    workbook.select({ sheet: 'Sheet1', row: 0, column: 0, rows: 1, columns: 1 });
    const { list, matches } = await read();
    const proposal = await addChecks(
      workbook,
      list,
      matches.map((match) => ({ ...match, rename: undefined })),
    );
    expect(JSON.stringify(proposal)).toContain("Parts[@[Length '[mm']]:[Press]]");
  });

  it('an own column Note stays, and ours is called Check note', async () => {
    await fillWorkbook(workbook, 'shop');
    workbook.type('Sheet1', 0, 0, [
      ['Section', 'Grade', 'Note'],
      ['PL3/8X6', 'A36', 'galvanize'],
    ]);
    workbook.select({ sheet: 'Sheet1', row: 0, column: 0, rows: 1, columns: 1 });
    const { list, matches } = await read();
    await write(await addChecks(workbook, list, matches));
    expect(column('Parts', 'Note')).toEqual(['galvanize']);
    expect(String(column('Parts', 'Check note')[0])).toContain('Understood as: ');
  });
});

describe('checking in the pane', () => {
  it('goes in slices, tells how far it is, and stops when told', async () => {
    const { list, matches, shop } = await open('shop+list450');
    const seen: number[] = [];
    const aborter = new AbortController();
    const progress = (done: number) => {
      seen.push(done);
      if (done >= 400) aborter.abort();
    };
    const results = await checkRows(headingsOf(matches), list.rows, shop, {
      signal: aborter.signal,
      progress,
    });
    expect(seen).toEqual([50, 100, 150, 200, 250, 300, 350, 400]);
    expect(results).toBeUndefined();
  });
});

describe('failing rows by reason', () => {
  async function groups(kind: string) {
    const { list, matches, shop } = await open(kind);
    const results = await checkRows(headingsOf(matches), list.rows, shop, {});
    return { list, matches, shop, groups: failGroups(results ?? [], shop.unit) };
  }

  it('rows with the same reason are one group, with the largest first', async () => {
    const { groups: found } = await groups('shop+list20');
    expect(found.map(({ verdict, rows }) => [verdict, rows.length])).toEqual([
      ['Hole too small', 3],
      ['Edge short', 3],
      ['Check input', 2],
      ['Check input', 2],
    ]);
    expect(found.find(({ verdict }) => verdict === 'Edge short')?.reason).toContain(
      '7/8 in from the center to the right end is under 1-1/4 in',
    );
    expect(found.find(({ verdict }) => verdict === 'Edge short')?.rows).toEqual([1, 9, 17]);
  });

  const failing = (finding: Finding): RowResult => ({
    blank: false,
    verdict: finding.verdict,
    deciding: finding,
    route: [],
    findings: [finding],
    readings: [],
  });

  it('sizes over one limit of one press are one reason, whatever they are', () => {
    const tooLong = (given: number, press: string, limit: number) =>
      failing({
        rule: 'press limit',
        outcome: 'failed',
        verdict: 'Too big',
        press,
        item: 'longestBar',
        sized: { is: 'part' },
        given,
        limit,
      });
    const found = failGroups(
      [
        tooLong(300, 'Bay A', 250),
        tooLong(400, 'Bay B', 250),
        tooLong(275, 'Bay A', 250),
        tooLong(275, 'Bay A', 260),
      ],
      'mm',
    );
    expect(found.map(({ rows }) => rows)).toEqual([[0, 2], [1], [3]]);
    expect(found[0]?.reason).toContain('And 1 reason of the same kind.');
    expect(found[1]?.reason).not.toContain('of the same kind');
  });

  it('many cells of one heading that cannot be read are told as one; up to six each by itself', () => {
    const unread = (received: string) =>
      failing(
        refusal(
          { code: 'invalid', argument: 'Section', received, problem: `'${received}'.`, allowed: '' },
          'Section',
        ),
      );
    const texts = ['PLX', 'LL', 'Q9', '??', 'x', 'n/a'];
    expect(failGroups(texts.map(unread), 'in')).toHaveLength(6);
    const [joined, ...others] = failGroups([...texts, 'tbd', 'PLX'].map(unread), 'in');
    expect(others).toEqual([]);
    expect(joined?.rows).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(joined?.reason).toContain('And 6 reasons of the same kind.');
  });

  it('sizes that turned into dates are one reason, whichever cells they stand in', () => {
    const dated = (argument: string, received: string) =>
      failing(
        refusal(
          { code: 'invalid', argument, received, problem: '', allowed: '', cause: 'turned into a date' },
          argument,
        ),
      );
    const found = failGroups([dated('Hole', '45724'), dated('Edge', '42370')], 'in');
    expect(found.map(({ rows, reason }) => [rows, reason])).toEqual([[[0, 1], 'A size turned into a date.']]);
  });

  it('runs of neighbors are found', () => {
    expect(runsOf([1, 2, 3, 7, 9, 10])).toEqual([
      { row: 1, count: 3 },
      { row: 7, count: 1 },
      { row: 9, count: 2 },
    ]);
  });

  it('Fix dates writes the fractions back as text, and is taken back', async () => {
    const { list, matches, shop } = await groups('shop+list16');
    const dates = dateCells(list, matches, shop.unit);
    expect(dates.map(({ readings }) => readings)).toEqual([['3/8'], ['3/8']]);
    const revert = await write(fixDates(list, dates));
    expect(workbook.memory.cell('Sheet1', 7, 5)).toMatchObject({ content: '3/8', format: '@' });
    await revert.run();
    expect(workbook.memory.cell('Sheet1', 7, 5)).toMatchObject({ content: 45724, format: 'General' });
  });

  it('Fix dates offers every date of the list, also in rows that fail for another reason first', async () => {
    const { list, matches, shop } = await groups('shop+list16');
    const at = (field: string) => matches.find((match) => match.field === field)?.at ?? -1;
    const rows = list.rows.map((cells) => [...cells]);
    const [bad = [], edge = [], unclear = []] = rows;
    bad[at('Section')] = 'XX9';
    bad[at('Hole')] = 42_370;
    edge[at('Edge')] = 37_987;
    unclear[at('End')] = 42_372;
    const before = dateCells(list, matches, shop.unit).filter(({ row }) => row > 2);
    const dates = dateCells({ ...list, rows }, matches, shop.unit);
    expect(dates).toEqual([
      { row: 0, column: at('Hole'), date: '1 January 2016', readings: ['1-1/16'] },
      { row: 1, column: at('Edge'), date: '1 January 2004', readings: ['1-1/4'] },
      { row: 2, column: at('End'), date: '3 January 2016', readings: ['1-3/16', '3-1/16'] },
      ...before,
    ]);
    const { title, steps } = fixDates({ ...list, rows }, dates);
    expect(steps).toHaveLength(dates.length - 1);
    expect(title).toBe(`Fix ${dates.length - 1} dates`);
  });

  it('in millimeters a number is never taken for a date', async () => {
    const { list, matches } = await groups('shop+list16');
    expect(dateCells(list, matches, 'mm')).toEqual([]);
  });

  it('setting a press writes the rows of the group only', async () => {
    const first = await open('shop+list16');
    await write(await addChecks(workbook, first.list, first.matches));
    const { list, matches } = await read();
    await write(setPress(list, matches, [1, 2, 9], 'Bay B'));
    const set = column('Parts', 'Press').flatMap((press, row) => (press === 'Bay B' ? row : []));
    expect(set).toEqual([1, 2, 9]);
    expect(column('Parts', 'Press').filter((press) => press !== null && press !== 'Bay B')).toEqual([]);
  });

  it('without a Press column in plain cells it says what to do first', async () => {
    const { list, matches } = await groups('shop+list16');
    expect(setPress(list, matches, [1], 'Bay B')).toContain('Add check columns first');
  });

  it('each press is compared on the failing rows', async () => {
    await fillWorkbook(workbook, 'shop');
    workbook.type('Sheet1', 0, 0, [
      ['Section', 'Grade', 'Length', 'Hole', 'Press'],
      ['L3X3X1/4', 'A36', '12', null, 'Bay A'],
      ['L3X3X1/4', 'A36', '12', null, 'Bay A'],
      ['PL3/8X6', 'A36', '12', null, 'Bay A'],
      ['PL3/8X6', 'A36', '12', '13/16', 'Bay A'],
      ['L3X3X1/4', 'A36', null, null, 'Bay A'],
    ]);
    workbook.select({ sheet: 'Sheet1', row: 0, column: 0, rows: 1, columns: 1 });
    const { list, matches, shop } = await read();
    expect(await comparePresses(list, matches, [0, 1], shop, {})).toMatchObject([
      { press: 'Bay A', runs: [], unknown: 0, mostly: 'No station' },
      { press: 'Bay B', runs: [0, 1], unknown: 0, mostly: undefined },
    ]);
    // Distances of the drawing are open in the plate with a hole: the press has nothing against it.
    const [, open] = await checkRows(headingsOf(matches), list.rows.slice(2), shop, {}).then(
      (all) => all ?? [],
    );
    expect(open).toMatchObject({ verdict: 'OK so far' });
    expect(await comparePresses(list, matches, [3, 4], shop, {})).toMatchObject([
      { press: 'Bay A', runs: [3], unknown: 0, mostly: 'No station' },
      { press: 'Bay B', runs: [3], unknown: 1, mostly: 'Not checked' },
    ]);
  });

  it('minutes and cost are those of the rows that a press runs; what is missing in them is named', async () => {
    await fillWorkbook(workbook, 'shop+clips');
    const { list, matches, shop } = await read();
    const [bayA, bayB] = (await comparePresses(list, matches, [0, 1, 2], shop, {})) ?? [];
    const minutes = (press: string) =>
      list.rows.map((row) => {
        const cells = [...row.slice(0, -1), press];
        const headings = readHeadings(list.headings);
        return shownItem(new ShownRow({ cells, headings, shop, unit: 'in' }), 'minutes', 'in');
      });
    const [c1 = 0, c2 = 0, c3 = 0] = minutes('Bay B').map(Number);
    expect((bayB?.work.seconds ?? 0) / 60).toBeCloseTo(c1 + c2 + c3, 9);
    expect((bayA?.work.seconds ?? 0) / 60).toBeCloseTo(Number(minutes('Bay A')[1]), 9);
    expect(bayB?.work.cost).toBeUndefined();
    expect(bayB?.work.missing).toEqual([
      'No cost: the press has no Hourly rate.',
      expect.stringMatching(/^Invented until the shop gives its own: .*Seconds to deburr/),
    ]);
  });

  it('the cost is there once the press has a rate, and says what it leaves out', async () => {
    await fillWorkbook(workbook, 'shop+clips');
    const row = 5 + workbook.shown('Presses').findIndex(([name]) => name === 'Hourly rate');
    workbook.type('Shop', row, 3, [['90']]);
    workbook.type('Sheet1', 3, 3, [[null]]);
    const { list, matches, shop } = await read();
    const [bayA, bayB] = (await comparePresses(list, matches, [0, 2], shop, {})) ?? [];
    expect(bayA?.work).toEqual({ missing: [] });
    const { seconds = 0, cost = 0, missing = [] } = bayB?.work ?? {};
    expect(cost).toBeCloseTo((seconds / 3600) * 90, 9);
    expect(missing).toContain('The cost has no material: the shop gives no Material price.');
  });
});
