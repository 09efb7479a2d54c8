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
  it('holds it against every press side by side as it is typed', async () => {
    await open('shop');
    await pane.fill('Section', 'PL1/2X4');
    await pane.says('Give at least a section and a grade.');
    await pane.fill('Grade', 'A36');
    await pane.fill('Hole', '1-3/16');
    await pane.says('102 % of rating');
    await pane.says('Over capacity');
    await pane.fill('Hole', '13/16');
    await pane.saysNoMore('Over capacity');
  });

  it('tells what a cell that cannot be read should say', async () => {
    await open('shop');
    await pane.fill('Section', 'PL1/2X4');
    await pane.fill('Grade', 'A37');
    await pane.says("'A37' is not a known grade");
    await pane.says('Check input');
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
    await pane.click('To the shop');
    await pane.button('Add shop sheet');
  });

  it('a column can be said to be something else, and the heading row too', async () => {
    await open('shop+list8');
    await pane.click('Check a list');
    await pane.says('10 of 11 columns are read · 2 guessed: look at them');
    await pane.fill('Column Remarks is read as', 'Finish');
    await pane.says('to be renamed Finish');
    await pane.fill('Row with the headings', '0');
    await pane.says('there is no Section column');
  });

  it('one change gives a group of rows a press, the checks follow, and it is taken back', async () => {
    const workbook = await open('shop');
    workbook.type('Sheet1', 0, 0, [
      ['Mark', 'Section', 'Grade', 'Length', 'Press'],
      ['C1', 'L3X3X1/4', 'A36', '12', 'Bay A'],
      ['C2', 'PL3/8X6', 'A36', '12', 'Bay A'],
      ['C3', 'L3X3X1/4', 'A36', '12', 'Bay A'],
    ]);
    workbook.select({ sheet: 'Sheet1', row: 0, column: 0, rows: 1, columns: 1 });
    await pane.click('Check a list');
    await pane.click('Check this list');
    await pane.click('Add check columns');
    await pane.click('Write');
    await pane.says('2 of 3 rows fail');
    expect(column(workbook, 'Verdict')).toEqual(['No station', 'OK', 'No station']);
    await pane.click(/2 rows · No station/);
    await pane.says('2 of 2');
    await pane.click('Set press Bay B for these 2');
    await pane.says('Set press Bay B');
    await pane.click('Write');
    await pane.says('3 rows checked, none fails');
    expect(column(workbook, 'Press')).toEqual(['Bay B', 'Bay A', 'Bay B']);
    await pane.click('Take back');
    await pane.says('2 of 3 rows fail');
    expect(column(workbook, 'Press')).toEqual(['Bay A', 'Bay A', 'Bay A']);
  });
});
