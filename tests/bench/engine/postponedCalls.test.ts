// @vitest-environment node
// It teaches the engine calls that wait, which no other test is to meet.
import '../support/engineOnNode.js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { listCheckWorkbook, rowCheckWorkbook } from '../../../scripts/bench/workbooks.mjs';
import { PostponedCalls } from '../../../src/bench/engine/postponedCalls.js';
import { registerFunctions } from '../../../src/bench/engine/registerFunctions.js';
import { openingBook, type OpenBook } from '../../../src/bench/open/openBook.js';
import { nodeCodec } from '../../../src/headless/files/nodeCodec.js';
import { loadFunctions } from '../../../src/headless/functions/loadFunctions.js';
import { recalculateWorkbook } from '../../../src/headless/recalculate/recalculate.js';
import { openWorkbook } from '../../../src/xlsx/workbook.js';
import { atOnce } from '../../../src/xlsx/pausing.js';
import { bundle, metadata } from '../../contract/support/built.js';

const functions = loadFunctions(bundle, metadata);
const rows = 150;
/** The verdict's column of the list, and the others that are checked. */
const first = 17;
let postponed: PostponedCalls;

beforeEach(() => {
  vi.useFakeTimers();
  postponed = new PostponedCalls();
  registerFunctions(functions, new Map(), () => undefined, postponed);
});
afterEach(() => vi.useRealTimers());

const opened = (bytes: Uint8Array): OpenBook => atOnce(openingBook(bytes, functions, { postponed }));

const column = ({ book }: OpenBook, at: number) =>
  Array.from({ length: rows }, (_, row) => book.value({ sheetId: 'sheet1', row: row + 1, col: at }));

const deliver = (calculate: (cellIds: number[], isLast: boolean) => void) =>
  atOnce(postponed.delivering(calculate));

/** Makes what waits until nothing does; gives how many cells were calculated again. */
function settle({ book }: OpenBook): number {
  let cells = 0;
  for (let round = 0; postponed.progress.total > 0; round++) {
    if (round > 20) throw new Error('it does not end');
    for (const _ of postponed.work()) void _;
    deliver((cellIds) => {
      cells += cellIds.length;
      book.model.dispatch('EVALUATE_CELLS', { cellIds });
    });
    vi.runAllTimers();
  }
  return cells;
}

/** What the headless recalculation makes of the same file. */
async function recalculated(
  bytes: Uint8Array,
): Promise<{ bytes: Uint8Array; of: (at: number) => unknown[] }> {
  const done = await recalculateWorkbook(bytes, functions);
  const cells = openWorkbook(done.bytes, nodeCodec).sheets[0]?.cells;
  const of = (at: number) =>
    Array.from({ length: rows }, (_, row) => cells?.values[cells.index.at(row + 1, at) ?? -1] ?? null);
  return { bytes: done.bytes, of };
}

describe('calls that are too many for one task', () => {
  it('show what the file has, and change nothing where that is right', async () => {
    const file = await recalculated(rowCheckWorkbook(rows));
    const open = opened(file.bytes);
    expect(postponed.progress).toEqual({ done: 0, total: 4 * rows });
    expect(column(open, first)).toEqual(file.of(first));
    expect(settle(open)).toBe(0);
    expect(postponed.progress).toEqual({ done: 0, total: 0 });
  });

  it('put right what the file has wrong', async () => {
    const file = await recalculated(rowCheckWorkbook(rows));
    const open = atOnce(
      openingBook(file.bytes, functions, {
        postponed,
        beforeGrid: ({ sheets }) => {
          const values = sheets[0]?.cells?.values ?? [];
          values[sheets[0]?.cells?.index.at(5, first) ?? -1] = 'OK, says a file that is wrong';
        },
      }),
    );
    expect(column(open, first)[4]).toBe('OK, says a file that is wrong');
    expect(settle(open)).toBe(1);
    expect(column(open, first)).toEqual(file.of(first));
  });

  it('put right every row that asks the same', async () => {
    const file = await recalculated(rowCheckWorkbook(rows));
    const open = atOnce(
      openingBook(file.bytes, functions, {
        postponed,
        beforeGrid: ({ sheets }) => {
          const cells = sheets[0]?.cells;
          for (const row of [5, 9]) if (cells) cells.values[cells.index.at(row, first) ?? -1] = 'wrong';
        },
      }),
    );
    const asked = open.book.formula({ sheetId: 'sheet1', row: 5, col: first }) ?? '';
    open.book.model.dispatch('UPDATE_CELL', { sheetId: 'sheet1', row: 9, col: first, content: asked });
    expect([5, 9].map((row) => column(open, first)[row - 1])).toEqual(['wrong', 'wrong']);
    expect(settle(open)).toBe(2);
    expect([5, 9].map((row) => column(open, first)[row - 1])).toEqual([file.of(first)[4], file.of(first)[4]]);
  });

  it('come in a moment where the file has nothing, from the top of the sheet down', async () => {
    const bytes = rowCheckWorkbook(rows);
    const file = await recalculated(bytes);
    const open = opened(bytes);
    const waiting = column(open, first + 3).filter((value) => value === '#GETTING_DATA').length;
    expect(waiting).toBe(100);
    const work = postponed.work();
    for (let call = 0; call < 40; call++) work.next();
    deliver((cellIds) => {
      const asked = cellIds.map((id) => open.book.getters.getCellPosition(id).row);
      expect(Math.max(...asked)).toBeLessThan(100);
      open.book.model.dispatch('EVALUATE_CELLS', { cellIds });
    });
    settle(open);
    for (const at of [first, first + 1, first + 2, first + 3])
      expect(column(open, at).map((value) => value ?? '')).toEqual(file.of(at).map((value) => value ?? ''));
  });

  it('are made for what is typed meanwhile', () => {
    const open = opened(rowCheckWorkbook(rows));
    const { model } = open.book;
    model.dispatch('UPDATE_CELL', { sheetId: 'sheet1', row: rows, col: 2, content: 'PL9X9' });
    settle(open);
    expect(column(open, first).at(-1)).toBe('Check input');
  });

  it('of a long list are made in pieces', async () => {
    const long = listCheckWorkbook(600);
    const done = await recalculateWorkbook(long, functions);
    const cells = openWorkbook(done.bytes, nodeCodec).sheets[0]?.cells;
    const open = opened(long);
    expect(postponed.progress.total).toBeGreaterThan(5);
    expect(open.book.value({ sheetId: 'sheet1', row: 0, col: first })).toBe('#GETTING_DATA');
    expect(settle(open)).toBe(1);
    for (const row of [1, 150, 600])
      for (const col of [first, first + 1, first + 2])
        expect(open.book.value({ sheetId: 'sheet1', row, col }) ?? '').toEqual(
          cells?.values[cells.index.at(row, col) ?? -1] ?? '',
        );
  });

  it('are answered for 2,000 cells in one task, from which others have their turn', () => {
    const cells = Array.from({ length: 4_500 }, (_, id) => id);
    for (const id of cells)
      postponed.postpone(`call ${id}`, { id, sheetId: 'sheet1', row: id, col: 0 }, () => ({ value: id }));
    atOnce(postponed.work());
    const told: [number, boolean][] = [];
    const delivering = postponed.delivering((ids, isLast) => void told.push([ids.length, isLast]));
    delivering.next();
    expect(told).toEqual([[2_000, false]]);
    expect(postponed.answer('call 4499')).toEqual({ result: { value: 4_499 } });
    atOnce(delivering);
    expect(told).toEqual([
      [2_000, false],
      [2_000, false],
      [500, true],
    ]);
    expect(postponed.answer('call 4499')).toBeUndefined();
  });

  it('are forgotten with their workbook', () => {
    opened(rowCheckWorkbook(rows));
    const waiting = postponed.work();
    waiting.next();
    postponed.forget();
    expect(waiting.next().done).toBe(true);
    expect(postponed.progress).toEqual({ done: 0, total: 0 });
  });
});
