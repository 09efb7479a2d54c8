// @vitest-environment jsdom
// Which list is added up, where a workbook has several: on one sheet or on two.
import { FluentProvider, webLightTheme } from '@fluentui/react-components';
import { act, createElement } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { SumsSection } from '../../../src/taskpane/handOff/SumsSection.js';
import type { Proposal } from '../../../src/taskpane/shared/change/proposal.js';
import { readShopState } from '../../../src/taskpane/shared/readShopState.js';
import { fakeTime, letPass } from '../support/fakeTime.js';
import type { MemoryWorkbook } from '../support/memoryWorkbook.js';
import { quoteBook } from '../steps/quoteBook.js';

let root: Root;
let page: HTMLElement;
beforeEach(() => {
  fakeTime();
  Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });
  page = document.body.appendChild(document.createElement('main'));
  root = createRoot(page);
});
afterEach(() => {
  vi.useRealTimers();
  act(() => root.unmount());
  page.remove();
});

interface Making {
  make(): Promise<Proposal | string>;
}
const asked = vi.hoisted((): { making?: unknown } => ({}));
vi.mock('../../../src/taskpane/shared/change/useChange.js', () => ({
  usePropose: () => (making: unknown) => void (asked.making = making),
}));

const settled = () => act(() => letPass(200));
const picker = () => page.querySelector<HTMLSelectElement>('select');
const choices = () => [...(picker()?.options ?? [])].map(({ value }) => value);

async function show(book: MemoryWorkbook): Promise<void> {
  const shop = await readShopState(book);
  if (shop.kind !== 'ready') throw new Error('the shop is not ready');
  const section = createElement(SumsSection, { workbook: book, shop });
  act(() => root.render(createElement(FluentProvider, { theme: webLightTheme }, section)));
  await settled();
}

/** What the button would add to the workbook. */
async function proposed(): Promise<Proposal | string> {
  await act(async () => page.querySelector('button')?.click());
  return (asked.making as Making).make();
}

async function choose(name: string): Promise<void> {
  const select = picker();
  if (!select) throw new Error('there is no choice of lists');
  await act(async () => {
    Object.getOwnPropertyDescriptor(HTMLSelectElement.prototype, 'value')?.set?.call(select, name);
    select.dispatchEvent(new Event('change', { bubbles: true }));
  });
}

/** A further list of two rows, as a table. */
function addList(book: MemoryWorkbook, name: string, sheet: string, row: number): void {
  book.type(sheet, row, 0, [
    ['Mark', 'Qty', 'Section', 'Grade'],
    ['H1', 7, 'PIPE 2 STD', 'A53'],
  ]);
  book.memory.act({ kind: 'table', name, area: { sheet, row, column: 0, rows: 2, columns: 4 } });
  book.tell({ kind: 'sheets' });
}

function titleOf(made: Proposal | string): unknown {
  if (typeof made === 'string') return made;
  const [, cells] = made.steps;
  return cells?.kind === 'cells' ? cells.contents?.[0]?.[0] : undefined;
}

describe('the list to add up', () => {
  it('is not asked for where there is one', async () => {
    await show(quoteBook());
    expect(picker()).toBeNull();
    expect(titleOf(await proposed())).toBe('Sums of Parts');
  });

  it.each([
    ['on the same sheet', 'Quote', 30],
    ['on another sheet', 'List check', 20],
  ])('is one of two, the second %s', async (_, sheet, row) => {
    const book = quoteBook();
    addList(book, 'Handrail', sheet, row);
    await show(book);
    expect(choices()).toEqual(['Parts', 'Handrail']);
    expect(titleOf(await proposed())).toBe('Sums of Parts');
    await choose('Handrail');
    const made = await proposed();
    expect(titleOf(made)).toBe('Sums of Handrail');
    expect(JSON.stringify(made)).toContain('SUMIFS(Handrail[Qty],Handrail[Section]');
    expect(JSON.stringify(made)).not.toContain('Parts[');
  });

  it('is offered when it comes, and the first one is taken when the chosen one goes', async () => {
    const book = quoteBook();
    await show(book);
    addList(book, 'Handrail', 'List check', 20);
    await settled();
    expect(choices()).toEqual(['Parts', 'Handrail']);
    await choose('Handrail');
    book.memory.act({ kind: 'drop table', name: 'Handrail' });
    book.tell({ kind: 'sheets' });
    await settled();
    expect(picker()).toBeNull();
    expect(titleOf(await proposed())).toBe('Sums of Parts');
  });
});
