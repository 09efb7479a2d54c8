// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest';
import { MemoryWorkbook } from '../support/memoryWorkbook.js';
import { ShownPane } from '../support/shownPane.js';
import { fillWorkbook } from '../support/workbooks.js';

let pane: ShownPane;
afterEach(() => pane.close());

async function checked(rows: string[][]): Promise<MemoryWorkbook> {
  const workbook = new MemoryWorkbook('Sheet1');
  await fillWorkbook(workbook, 'shop');
  pane = new ShownPane(workbook);
  workbook.type('Sheet1', 0, 0, [['Mark', 'Section', 'Grade', 'Length', 'Press'], ...rows]);
  workbook.select({ sheet: 'Sheet1', row: 0, column: 0, rows: 1, columns: 1 });
  await pane.click('Check a list');
  await pane.click('Check this list');
  return workbook;
}

describe('how many rows can run', () => {
  it('counts them, names the press that lets more, and writes it into these rows alone', async () => {
    const workbook = await checked([
      ['C1', 'L3X3X1/4', 'A36', '12', 'Bay A'],
      ['C2', 'PL3/8X6', 'A36', '12', 'Bay A'],
      ['C3', 'L6X6X1/2', 'A36', '12', 'Bay A'],
    ]);
    await pane.says('1 of 3 can run; set Bay B on C1 and 1 more can');
    await pane.click('Set Bay B on C1');
    await pane.click('Write to sheet');
    await pane.says('Done: Set press Bay B');
    expect([1, 2, 3].map((row) => workbook.memory.cell('Sheet1', row, 4).content)).toEqual([
      ...['Bay B', 'Bay A', 'Bay A'],
    ]);
  });

  it('names no press where none lets more rows run', async () => {
    await checked([['C2', 'PL3/8X6', 'A36', '12', 'Bay A']]);
    await pane.says('1 of 1 can run');
    expect(pane.text).not.toContain('more can');
  });
});
