// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest';
import { MemoryWorkbook } from '../support/memoryWorkbook.js';
import { ShownPane } from '../support/shownPane.js';
import { fillWorkbook } from '../support/workbooks.js';

let pane: ShownPane;
afterEach(() => pane.close());

async function open(kind: string): Promise<MemoryWorkbook> {
  const workbook = new MemoryWorkbook('Sheet1');
  await fillWorkbook(workbook, kind);
  pane = new ShownPane(workbook);
  return workbook;
}

const column = (workbook: MemoryWorkbook, heading: string) => {
  const [headings = [], ...rows] = workbook.shown('Parts');
  return rows.map((row) => row[headings.indexOf(heading)]);
};

describe('trying one part', () => {
  it('checks it against every press side by side as it is typed', async () => {
    await open('shop');
    await pane.fill('Section', 'PL1/2X4');
    await pane.says('Give at least a section and a grade.');
    await pane.fill('Grade', 'A36');
    await pane.fill('Hole', '1-3/16');
    await pane.says('102% of rating');
    await pane.says('Over capacity');
    await pane.fill('Hole', '13/16');
    await pane.saysNoMore('Over capacity');
  });

  it('has minutes on each press that makes it, with what they stand on; cost once the press has a rate', async () => {
    const workbook = await open('shop');
    await pane.fill('Section', 'PL1/2X4');
    await pane.fill('Grade', 'A36');
    await pane.says('No time: give Length.');
    await pane.fill('Length', '8');
    await pane.fill('Qty', '20');
    await pane.says('to set up Bay A,');
    expect(pane.text).toContain('Invented until the shop gives its own:');
    expect(pane.text).toContain('No cost: give the Hourly rate of Bay A.');
    expect(pane.text).not.toContain('· cost');
    const row = 5 + workbook.shown('Presses').findIndex(([name]) => name === 'Hourly rate');
    workbook.type('Shop', row, 2, [['60']]);
    await pane.says('· cost');
    const [, minutes, cost] = /(\d+\.\d) min · cost (\d+\.\d\d)/.exec(pane.text) ?? [];
    expect(Number(cost)).toBeCloseTo(Number(minutes), 0);
  });

  it('tells what a cell that cannot be read should say', async () => {
    await open('shop');
    await pane.fill('Section', 'PL1/2X4');
    await pane.fill('Grade', 'A37');
    await pane.says("'A37' is not a known grade");
    await pane.says('Check input');
  });

  it('what cannot be read is said once, above the presses, and no press then shows a share', async () => {
    await open('shop');
    await pane.fill('Section', 'PL1/2X4');
    await pane.fill('Grade', 'A36');
    await pane.fill('Hole', '13/16');
    await pane.says('% of rating');
    await pane.fill('Bolt', '9/17');
    await pane.fill('Length', 'x');
    await pane.says("Length: 'x'");
    expect(pane.text).not.toContain('% of rating');
    expect(pane.text).not.toContain('Decided by');
    for (const sentence of ['Bolt: ', 'Length: ']) expect(pane.text.split(sentence)).toHaveLength(2);
  });
});

describe('checking a list', () => {
  it('with no list at hand says what to do', async () => {
    await open('shop');
    await pane.click('Check a list');
    await pane.says('Select the cells of a parts list, its headings included');
  });

  it('without a shop sheet shows the result and leads to the shop', async () => {
    await open('list8');
    await pane.click('Check this list');
    await pane.click('Check this list');
    await pane.says('the workbook needs a shop sheet');
    await pane.click('Go to Shop');
    await pane.button('Add shop sheet');
  });

  it('a column can be said to be something else, and the heading row too', async () => {
    await open('shop+list8');
    await pane.click('Check a list');
    await pane.says('10 of 11 columns are read · 2 guessed: look at them');
    await pane.fill('Column K, Remarks, is read as', 'Finish');
    await pane.says('to be renamed Finish');
    await pane.fill('Row with the headings', '0');
    await pane.says('there is no Section column');
  });

  it('minutes and the press chosen are added where they are asked for, and nothing else', async () => {
    const workbook = await open('shop+clips');
    await pane.click('Check a list');
    await pane.click('Check this list');
    await pane.says('Columns: verdict, share of rating, note');
    for (const label of [/^Cost:/, /^Minutes:/, /^Press chosen:/, /^Cost:/])
      (await pane.field(label)).click();
    await pane.says('Columns: verdict, share of rating, note, and 2 more');
    await pane.click('Add check columns');
    await pane.click('Write to sheet');
    await pane.says('Done: Add check columns.');
    expect(workbook.shown('Parts')[0]?.slice(-3)).toEqual(['Note', 'Press chosen', 'Minutes']);
    expect(column(workbook, 'Press chosen')).toEqual(['Bay A', 'Bay A', 'Bay A']);
  });

  it('a checked list is given another column, which is then offered no more, and it is taken back', async () => {
    const workbook = await open('shop+clips');
    await addChecks();
    await pane.says('More columns');
    (await pane.field(/^Route:/)).click();
    await pane.click('Add 1 column');
    await pane.click('Write to sheet');
    await pane.says('Done: Add columns.');
    expect(workbook.shown('Parts')[0]?.at(-1)).toBe('Route');
    expect(column(workbook, 'Route')[1]).toBe('shear');
    await pane.until('no Route to tick', () => !pane.text.includes('Route: the order of work'));
    await pane.click('Undo');
    await pane.says('Route: the order of work');
    expect(workbook.shown('Parts')[0]?.at(-1)).toBe('Note');
  });

  it('one change gives a group of rows a press, the checks follow, and it is taken back', async () => {
    const workbook = await open('shop+clips');
    await pane.click('Check a list');
    await pane.click('Check this list');
    await pane.click('Add check columns');
    await pane.click('Write to sheet');
    await pane.says('2 of 3 rows fail');
    expect(column(workbook, 'Verdict')).toEqual(['No station', 'OK', 'No station']);
    await pane.click(/2 rows · No station/);
    await pane.says('2 of 2');
    await pane.says('No cost: the press has no Hourly rate.');
    await pane.click('Compare presses on 3 rows');
    await pane.button('Set Bay B for these 3 rows');
    await pane.button('Set Bay A for the 1 row it runs');
    await pane.click('Set Bay B for these 2 rows');
    await pane.says('Set press Bay B');
    await pane.click('Write to sheet');
    await pane.says('All 3 rows pass');
    expect(column(workbook, 'Press')).toEqual(['Bay B', 'Bay A', 'Bay B']);
    await pane.click('Undo');
    await pane.says('2 of 3 rows fail');
    expect(column(workbook, 'Press')).toEqual(['Bay A', 'Bay A', 'Bay A']);
  });

  it('a group of one row speaks of one row', async () => {
    const workbook = await open('shop');
    workbook.type('Sheet1', 0, 0, [
      ['Mark', 'Section', 'Grade', 'Length', 'Press'],
      ['114', 'L3X3X1/4', 'A36', '12', 'Bay A'],
      ['C2', 'PL3/8X6', 'A36', '12', 'Bay A'],
    ]);
    workbook.select({ sheet: 'Sheet1', row: 0, column: 0, rows: 1, columns: 1 });
    await pane.click('Check a list');
    await pane.says('No column is read as Qty, so every row counts as one piece.');
    await pane.click('Check this list');
    await pane.click(/^114 · No station/);
    await pane.says('Which press can run this row');
    const set = await pane.button('Set Bay B for this row');
    expect(set.textContent).toBe('Set Bay B');
    await pane.click('Go to row');
    await pane.says('1 of 1: row 2, mark 114');
    expect(pane.text).not.toContain('Previous row');
  });

  it('rows added under a checked list are named, filled, and the fill is taken back', async () => {
    const workbook = await open('shop+list8');
    await addChecks();
    const [table] = workbook.memory.tables.filter(({ name }) => name === 'Parts');
    if (!table) throw new Error('no table');
    table.area = { ...table.area, rows: table.area.rows + 1 };
    workbook.type('Sheet1', 11, 1, [
      ['GP9', 12, 'PL3/8X8', 'A36', '10-1/2', '13/16', '1 each end', '3/4', '4', '1-1/2'],
    ]);
    await pane.says('1 row of this list has no checks yet.');
    await pane.click('Fill the checks of 1 row');
    await pane.click('Write to sheet');
    await pane.saysNoMore('no checks yet');
    expect(column(workbook, 'Verdict').at(-1)).toBe('OK');
    await pane.click('Undo');
    await pane.says('1 row of this list has no checks yet.');
    expect(column(workbook, 'Verdict').at(-1)).toBeNull();
  });

  it('a heading renamed in a checked list is offered back, and the rows are shown as the sheet sees them', async () => {
    const workbook = await open('shop+list8');
    await addChecks();
    await pane.says('2 of 8 rows fail');
    const grade = workbook.shown('Parts')[0]?.indexOf('Grade') ?? -1;
    workbook.type('Sheet1', 2, grade, [['Color']]);
    await pane.says('On the sheet Color is not read as Grade. The rows below are as the sheet sees them.');
    await pane.says('Check input8');
    expect(column(workbook, 'Verdict')).toEqual(Array.from({ length: 8 }, () => 'Check input'));
    await pane.click('Rename Color to Grade');
    await pane.click('Write to sheet');
    await pane.saysNoMore('as the sheet sees them');
    await pane.says('2 of 8 rows fail');
    expect(workbook.shown('Parts')[0]?.[grade]).toBe('Grade');
  });

  it('a stopped check leaves one way to go on', async () => {
    await open('shop+list8000');
    await pane.click('Check a list');
    await pane.click('Check this list');
    await pane.click('Stop');
    await pane.button('Check again');
    expect(pane.hasButton('Check this list')).toBe(false);
  });

  it('a cell of a second list takes that list, and a cell of none is told in a sentence', async () => {
    const workbook = await open('shop');
    workbook.type('Sheet1', 0, 0, [
      ['Mark', 'Section', 'Grade', 'Length'],
      ['A1', 'PL3/8X6', 'A36', 45_724],
    ]);
    const area = { sheet: 'Sheet1', row: 0, column: 0, rows: 2, columns: 4 };
    workbook.memory.tables.push({ name: 'ListA', area, hasTotals: false });
    workbook.type('Sheet1', 5, 0, [
      ['Mark', 'Section', 'Grade', 'Length'],
      ['B1', 'PL3/8X6', 'A36', '12'],
    ]);
    workbook.select({ ...area, rows: 1, columns: 1 });
    await pane.click('Check a list');
    await pane.field('List');
    workbook.select({ ...area, row: 6, rows: 1, columns: 1 });
    await pane.click('Use selected cells');
    await pane.says('Cells Sheet1!A6:D7');
    await pane.says('6: Mark, Section, Grade, Length');
    workbook.select({ sheet: 'Shop', row: 7, column: 1, rows: 1, columns: 1 });
    await pane.click('Use selected cells');
    await pane.says('Around Shop!B8 there is no list');
    expect((await pane.field('List')).value).toBe('cells');
    await pane.fill('List', 'table ListA');
    await pane.saysNoMore('there is no list');
  });
});

async function addChecks(): Promise<void> {
  await pane.click('Check a list');
  await pane.click('Check this list');
  await pane.click('Add check columns');
  await pane.click('Write to sheet');
  await pane.says('Done: Add check columns.');
}

describe('sizes that became dates', () => {
  it('are named with what they may be, and led to, where that is not certain', async () => {
    const workbook = await open('shop');
    workbook.type('Sheet1', 0, 0, [
      ['Mark', 'Section', 'Grade', 'Hole', 'End'],
      ['C1', 'PL3/8X6', 'A36', 45_724, 42_372],
      ['C2', 'PL3/8X6', 'A36', 38_018, '2'],
    ]);
    workbook.select({ sheet: 'Sheet1', row: 0, column: 0, rows: 1, columns: 1 });
    await pane.click('Check a list');
    await pane.click('Check this list');
    await pane.click(/A size turned into a date/);
    await pane.says('2 more dates may be one of several sizes, or none: type them again as text.');
    await pane.says('E2, 3 January 2016: 1-3/16 or 3-1/16');
    await pane.says('D3, 1 February 2004: Ø2-1/4 or 2 @ 1/4');
    await pane.click('E2');
    expect(workbook.visited.at(-1)).toMatchObject({ row: 1, column: 4, rows: 1, columns: 1 });
    await pane.click('Fix 1 date');
    await pane.says('Sheet1!D2 becomes 3/8');
  });

  it('still show as dates when check columns are added, since their number would say nothing', async () => {
    const workbook = await open('shop');
    workbook.type('Sheet1', 0, 0, [
      ['Mark', 'Section', 'Grade', 'End'],
      ['C1', 'PL3/8X6', 'A36', 42_372],
      ['C2', 'PL3/8X6', 'A36', 2],
    ]);
    workbook.memory.set('Sheet1', 1, 3, { format: 'd-mmm-yy' });
    workbook.select({ sheet: 'Sheet1', row: 0, column: 0, rows: 1, columns: 1 });
    await addChecks();
    const formats = [1, 2].map((row) => workbook.memory.cell('Sheet1', row, 4).format);
    expect(formats).toEqual(['d-mmm-yy', '@']);
  });
});

describe('a group of which a press runs only some rows', () => {
  it('gives the press to those, and leaves the others', async () => {
    const workbook = await open('shop');
    workbook.type('Sheet1', 0, 0, [
      ['Mark', 'Section', 'Grade', 'Length', 'Press'],
      ['C1', 'L3X3X1/4', 'A36', '12', 'Bay A'],
      ['C2', 'L6X6X1/2', 'A36', '12', 'Bay A'],
    ]);
    workbook.select({ sheet: 'Sheet1', row: 0, column: 0, rows: 1, columns: 1 });
    await addChecks();
    await pane.click(/2 rows · No station/);
    await pane.click('Set Bay B for the 1 row it runs');
    await pane.says('Set press Bay B');
    await pane.click('Write to sheet');
    await pane.says('Done: Set press Bay B for 1 row.');
    expect(column(workbook, 'Press')).toEqual(['Bay B', 'Bay A']);
  });
});

describe('rows added to a checked list', () => {
  it('become text with their checks, so that what is typed next is no date', async () => {
    const workbook = await open('shop+clips');
    await addChecks();
    const [parts] = workbook.memory.tables.filter(({ name }) => name === 'Parts');
    if (!parts) throw new Error('no table');
    parts.area = { ...parts.area, rows: parts.area.rows + 1 };
    workbook.type('Sheet1', 4, 1, [['C4', 'PL3/8X6', 'A36', '12', 'Bay A']]);
    await pane.says('1 row of this list has no checks yet.');
    await pane.click('Fill the checks of 1 row');
    await pane.click('Write to sheet');
    await pane.says('Done: Fill the checks of 1 row.');
    expect(column(workbook, 'Verdict')[3]).toBe('OK');
    expect(workbook.memory.cell('Sheet1', 4, 4).format).toBe('@');
  });
});
