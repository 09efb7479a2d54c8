import { expect, it } from 'vitest';
import type { Area } from '../../../src/workbook/area.js';
import type { Change } from '../../../src/workbook/change.js';
import type { Step } from '../../../src/workbook/step.js';
import { openGrid } from '../support/gridUnderTest.js';

const area = (row: number, column: number, rows: number, columns: number): Area => ({
  sheet: 'Parts',
  row,
  column,
  rows,
  columns,
});

async function openTable() {
  const { workbook } = await openGrid();
  const write = async (...steps: Step[]) => workbook.write(await workbook.plan(steps), { confirmed: true });
  await write(
    { kind: 'cells', area: area(0, 0, 3, 1), contents: [['Qty'], [2], [3]] },
    { kind: 'table', name: 'Counts', area: area(0, 0, 3, 1) },
    { kind: 'cells', area: area(0, 5, 1, 1), contents: [[{ formula: '=SUM(Counts[#Data])' }]] },
  );
  const sum = async () => {
    const [read] = await workbook.read([area(0, 5, 1, 1)], ['values', 'formulas']);
    return [read?.values[0]?.[0], read?.formulas[0]?.[0]];
  };
  return { workbook, write, sum };
}

it('a formula over a table takes in the rows and columns that the table grows by, and lets go of them again', async () => {
  const { write, sum } = await openTable();
  expect(await sum()).toEqual([5, '=SUM(Counts[#Data])']);
  const rows = await write(
    { kind: 'cells', area: area(3, 0, 1, 1), contents: [[40]] },
    { kind: 'resize', table: 'Counts', area: area(0, 0, 4, 1) },
  );
  expect(await sum()).toEqual([45, '=SUM(Counts[#Data])']);
  await write(
    { kind: 'cells', area: area(0, 1, 4, 1), contents: [['More'], [100], [100], [100]] },
    { kind: 'resize', table: 'Counts', area: area(0, 0, 4, 2) },
  ).then(async (columns) => {
    expect(await sum()).toEqual([345, '=SUM(Counts[#Data])']);
    await columns.run();
  });
  expect(await sum()).toEqual([45, '=SUM(Counts[#Data])']);
  await rows.run();
  expect(await sum()).toEqual([5, '=SUM(Counts[#Data])']);
});

it('tells of the formula that changed with the table', async () => {
  const { workbook, write } = await openTable();
  const told: Change[] = [];
  await workbook.watch((change) => told.push(change));
  await write({ kind: 'resize', table: 'Counts', area: area(0, 0, 2, 1) });
  expect(told).toContainEqual({ kind: 'cells', areas: [area(0, 5, 1, 1)], author: 'here', ours: true });
});
