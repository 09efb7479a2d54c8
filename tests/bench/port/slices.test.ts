import { describe, expect, it } from 'vitest';
import { GridWorkbook } from '../../../src/bench/port/gridWorkbook.js';
import type { Change } from '../../../src/workbook/change.js';
import type { Area } from '../../../src/workbook/area.js';
import { openGrid } from '../support/gridUnderTest.js';

const rows = 300;
const area: Area = { sheet: 'Parts', row: 0, column: 0, rows, columns: 2 };
const sums = { ...area, column: 2, columns: 1 };
const contents = Array.from({ length: rows }, (_, row) => [row, `C${row}`]);
const formulas = contents.map((_, row) => [{ formula: `=A${row + 1}*2` }]);

/** A port that writes a few rows at a time. */
async function opened() {
  const { book } = await openGrid();
  const workbook = new GridWorkbook(book, 4000);
  const plan = await workbook.plan([
    { kind: 'cells', area, contents },
    { kind: 'cells', area: sums, contents: formulas },
    { kind: 'name', name: 'Last', area: { ...sums, row: rows - 1, rows: 1 } },
  ]);
  const values = async () => (await workbook.read([{ ...area, columns: 3 }], ['values']))[0]?.values ?? [];
  return { book, workbook, plan, values };
}

const filled = contents.map(([number, mark]) => [number, mark, Number(number) * 2]);
const blank = contents.map(() => [null, null, null]);

describe('what is written in several messages', () => {
  it('tells how far it is, and the page goes on meanwhile', async () => {
    const { workbook, plan, values } = await opened();
    const told: number[] = [];
    let turns = 0;
    const timer = setInterval(() => turns++, 0);
    await workbook.write(plan, { progress: (done, total) => told.push(done / total) });
    clearInterval(timer);
    expect(told.length).toBeGreaterThan(5);
    expect(told).toEqual([...told].sort((a, b) => a - b));
    expect(told.at(-1)).toBe(1);
    expect(turns).toBeGreaterThan(3);
    expect(await values()).toEqual(filled);
  });

  it('is one step to undo and to do again', async () => {
    const { book, workbook, plan, values } = await opened();
    await workbook.write(plan);
    book.model.dispatch('REQUEST_UNDO');
    expect(await values()).toEqual(blank);
    expect(await workbook.names()).toEqual([]);
    expect(book.getters.canUndo()).toBe(false);
    book.model.dispatch('REQUEST_REDO');
    expect(await values()).toEqual(filled);
    expect((await workbook.names()).map(({ name }) => name)).toEqual(['Last']);
  });

  it('is taken back as one step too, and told as undone where it was', async () => {
    const { book, workbook, plan, values } = await opened();
    const revert = await workbook.write(plan);
    book.model.dispatch('REQUEST_UNDO');
    await expect(revert.run()).rejects.toMatchObject({ trouble: 'undone' });
    book.model.dispatch('REQUEST_REDO');
    await revert.run();
    expect(await values()).toEqual(blank);
    book.model.dispatch('REQUEST_UNDO');
    expect(await values()).toEqual(filled);
  });

  it('is put back when it is stopped halfway', async () => {
    const { workbook, plan, values } = await opened();
    const stop = new AbortController();
    const progress = (done: number, total: number) => done > total / 2 && stop.abort();
    await expect(workbook.write(plan, { progress, signal: stop.signal })).rejects.toMatchObject({
      trouble: 'canceled',
    });
    expect(await values()).toEqual(blank);
  });

  it('tells of the calculation once everything is calculated', async () => {
    const { workbook, plan, values } = await opened();
    const last: unknown[] = [];
    const heard: Change['kind'][] = [];
    await workbook.watch((change) => {
      heard.push(change.kind);
      if (change.kind === 'calculated') void values().then((read) => last.push(read.at(-1)?.at(-1)));
    });
    await workbook.write(plan);
    await expect.poll(() => last.at(-1)).toBe((rows - 1) * 2);
    expect(heard.lastIndexOf('calculated')).toBeGreaterThan(heard.lastIndexOf('cells'));
  });

  it('stays in several steps where somebody works in between', async () => {
    const { book, workbook, plan, values } = await opened();
    let typed = false;
    await workbook.write(plan, {
      progress: () => {
        if (typed) return;
        typed = true;
        book.model.dispatch('UPDATE_CELL', { sheetId: 'parts', row: 0, col: 9, content: '=A1+7' });
      },
    });
    expect(await values()).toEqual(filled);
    expect(book.value({ sheetId: 'parts', row: 0, col: 9 })).toBe(7);
    book.model.dispatch('REQUEST_UNDO');
    expect(book.value({ sheetId: 'parts', row: 0, col: 9 })).toBe(7);
    expect((await values())[0]).toEqual(filled[0]);
    expect(await values()).not.toEqual(filled);
  });
});
