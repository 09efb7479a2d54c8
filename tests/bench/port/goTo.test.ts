import { expect, it } from 'vitest';
import { openGrid } from '../support/gridUnderTest.js';

it.each([
  ['wider than the window', { row: 40, column: 2, rows: 1, columns: 24 }],
  ['taller than the window', { row: 3, column: 1, rows: 90, columns: 2 }],
  ['left of what is shown', { row: 0, column: 0, rows: 1, columns: 1 }],
])('going to an area %s shows its first cell', async (_, place) => {
  const { workbook, book } = await openGrid();
  const { sheetId } = book.getters.getActivePosition();
  book.model.dispatch('RESIZE_SHEETVIEW', { width: 700, height: 400, gridOffsetX: 0, gridOffsetY: 0 });
  book.model.dispatch('SCROLL_TO_CELL', { col: 20, row: 80 });
  const area = { sheet: 'Parts', ...place };
  await workbook.goTo(area);
  const first = { sheetId, col: place.column, row: place.row };
  expect(book.getters.isVisibleInViewport(first)).toBe(true);
  expect(await workbook.selection()).toEqual([area]);
});

it('going to an area that fits shows all of it', async () => {
  const { workbook, book } = await openGrid();
  const { sheetId } = book.getters.getActivePosition();
  book.model.dispatch('RESIZE_SHEETVIEW', { width: 700, height: 400, gridOffsetX: 0, gridOffsetY: 0 });
  await workbook.goTo({ sheet: 'Parts', row: 50, column: 10, rows: 3, columns: 3 });
  for (const [col, row] of [
    [10, 50],
    [12, 52],
  ] as const)
    expect(book.getters.isVisibleInViewport({ sheetId, col, row })).toBe(true);
});

it('going to a row beside a frozen column shows its first cells, not its last', async () => {
  const { workbook, book } = await openGrid();
  const { sheetId } = book.getters.getActivePosition();
  book.model.dispatch('FREEZE_COLUMNS', { sheetId, quantity: 1 });
  book.model.dispatch('RESIZE_SHEETVIEW', { width: 700, height: 400, gridOffsetX: 0, gridOffsetY: 0 });
  await workbook.goTo({ sheet: 'Parts', row: 30, column: 0, rows: 1, columns: 24 });
  expect(book.getters.isVisibleInViewport({ sheetId, col: 1, row: 30 })).toBe(true);
  expect(book.getters.isVisibleInViewport({ sheetId, col: 23, row: 30 })).toBe(false);
});
