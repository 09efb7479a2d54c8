import { describe, expect, it } from 'vitest';
import { verdicts } from '../../../src/core/check/verdict.js';
import { readCheckedLists } from '../../../src/taskpane/shared/checkedLists.js';
import { MemoryWorkbook } from '../support/memoryWorkbook.js';

async function listOf(headings: string[], ...rows: string[][]) {
  const workbook = new MemoryWorkbook('Sheet1');
  workbook.type('Sheet1', 0, 0, [headings, ...rows]);
  const area = { sheet: 'Sheet1', row: 0, column: 0, rows: rows.length + 1, columns: headings.length };
  workbook.memory.tables.push({ name: 'Parts', area, hasTotals: false });
  const [list] = await readCheckedLists(workbook);
  return list;
}

describe('the rows of a checked list', () => {
  it('pass, are not fully checked, or fail; what is made off the press is neither', async () => {
    const list = await listOf(['Mark', 'Verdict'], ...verdicts.map((verdict) => ['A', verdict]));
    expect(list).toMatchObject({ rows: 16, unknown: 4, failing: 9, errors: 0 });
  });

  it('are not fully checked where the column Open says something, whatever their word', async () => {
    const list = await listOf(
      ['Verdict', 'Open'],
      ['Too big', 'Hole: Pitch is blank.'],
      ['Too big', ''],
      ['Not checked', 'Length is blank.'],
      ['OK', ''],
      ['', ''],
    );
    expect(list).toMatchObject({ rows: 4, unknown: 2, failing: 2 });
  });

  it('count an error, which is no verdict', async () => {
    expect(await listOf(['Verdict'], ['#VALUE!'], ['OK'])).toMatchObject({ rows: 1, errors: 1 });
  });
});
