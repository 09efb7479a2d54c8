// @vitest-environment jsdom
import { createElement } from 'react';
import { createRoot } from 'react-dom/client';
import { expect, it, vi } from 'vitest';
import type { ShopState } from '../../../src/taskpane/shared/shopState.js';
import { useShop } from '../../../src/taskpane/shared/useShop.js';
import { MemoryWorkbook } from '../support/memoryWorkbook.js';
import { fillWorkbook } from '../support/workbooks.js';

/** The shop as a component has it, in a page without a browser. */
function shown(workbook: MemoryWorkbook) {
  let state: ShopState = { kind: 'loading' };
  const root = createRoot(document.createElement('div'));
  root.render(
    createElement(() => {
      state = useShop(workbook);
      return null;
    }),
  );
  const ready = () => {
    if (state.kind !== 'ready') throw new Error(`the shop is ${state.kind}`);
    return state;
  };
  return { ready, close: () => root.unmount() };
}

it('stays the same shop where its cells were calculated and say the same, and is another where they do not', async () => {
  const workbook = new MemoryWorkbook('Sheet1');
  await fillWorkbook(workbook, 'shop');
  const { ready, close } = shown(workbook);
  const before = await vi.waitFor(ready);
  const { stampArea, tables } = before;
  const read = vi.spyOn(workbook, 'read');
  const readings = () => read.mock.calls.length;

  workbook.tell({ kind: 'calculated', areas: [stampArea] });
  await vi.waitFor(() => expect(readings()).toBeGreaterThanOrEqual(2));
  await Promise.all(read.mock.results.map(({ value }) => value as Promise<unknown>));
  await new Promise((resolve) => setTimeout(resolve, 50));
  expect(ready()).toBe(before);

  const { sheet, row, column } = tables.presses.area;
  workbook.type(sheet, row + 1, column, [['Bay C']]);
  await vi.waitFor(() => expect(ready().shop).not.toBe(before.shop));
  expect(ready().shop.stamp).not.toBe(before.shop.stamp);
  close();
});
