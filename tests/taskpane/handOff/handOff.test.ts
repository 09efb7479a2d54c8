// @vitest-environment jsdom
import { FluentProvider, webLightTheme } from '@fluentui/react-components';
import axe from 'axe-core';
import { act, createElement } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { MadeCopy } from '../../../src/taskpane/handOff/copyMaker.js';
import HandOff from '../../../src/taskpane/handOff/index.js';
import type { Proposal } from '../../../src/taskpane/shared/change/proposal.js';
import { readShopState } from '../../../src/taskpane/shared/readShopState.js';
import type { ShopState } from '../../../src/taskpane/shared/shopState.js';
import { fakeTime, letPass } from '../support/fakeTime.js';
import { TellingOwnWrites } from '../../../src/workbook/ownWrites.js';
import type { MemoryWorkbook } from '../support/memoryWorkbook.js';
import { listRow, quoteBook } from '../steps/quoteBook.js';

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
  Reflect.deleteProperty(globalThis, 'tonrowCopies');
});

/** A proposal is written at once, as after a yes. */
const answers = vi.hoisted((): { propose?: (given: unknown) => void } => ({}));
vi.mock('../../../src/taskpane/shared/change/useChange.js', () => ({ usePropose: () => answers.propose }));

const proposed: Proposal[] = [];

async function show(memory: MemoryWorkbook, shop?: ShopState): Promise<void> {
  // As the pane has it.
  const book = new TellingOwnWrites(memory);
  proposed.length = 0;
  answers.propose = (given) => {
    const proposal = given as Proposal;
    proposed.push(proposal);
    void book
      .plan(proposal.steps)
      .then((plan) => book.write(plan, { confirmed: true }))
      .then(() => proposal.written?.());
  };
  const state = shop ?? (await readShopState(book));
  const place = createElement(HandOff, { workbook: book, shop: state });
  act(() => root.render(createElement(FluentProvider, { theme: webLightTheme }, place)));
  await settled();
}

const settled = () => act(() => letPass(200));
const text = () => page.textContent ?? '';
const buttons = (name: string) =>
  [...page.querySelectorAll('button')].filter(({ textContent }) => textContent === name);
async function click(name: string, which = 0): Promise<void> {
  const found = buttons(name)[which];
  if (!found) throw new Error(`no button ${name}`);
  await act(async () => found.click());
  await settled();
}

describe('a copy for the shop, where no file can be saved', () => {
  it('is previewed, made, checked, and brought back', async () => {
    const book = quoteBook();
    await show(book);
    expect(buttons('Bring formulas back')).toHaveLength(0);
    await click('Preview the copy');
    expect(text()).toContain('Quote: 16');
    expect(text()).toContain('List check: 1');
    expect(book.memory.sheets.has('Tonrow formulas')).toBe(false);
    await click('Make values copy');
    expect(text()).toContain('Done: 18 formulas are values now, and every cell shows what it showed.');
    // The shop is still read: its formula is in the list.
    expect(await readShopState(book)).toMatchObject({ kind: 'ready', keptOn: 'Tonrow formulas' });
    await click('Bring formulas back');
    // The list check fills two columns of six rows: the headings, four parts and a subtotal.
    expect(proposed.at(-1)?.remarks).toEqual([
      '18 formulas come back into their cells.',
      '11 cells are emptied so that a formula beside can fill them again.',
      'The list on the sheet Tonrow formulas is emptied: it is no longer needed.',
    ]);
    expect(text()).toContain('All 18 formulas are back, each identical to the list.');
    expect(await readShopState(book)).not.toHaveProperty('keptOn');
  });

  it('warns of cells that were edited since', async () => {
    const book = quoteBook();
    await show(book);
    await click('Preview the copy');
    await click('Make values copy');
    act(() => void book.type('Quote', 12, 4, [[99]]));
    await click('Bring formulas back');
    expect(proposed.at(-1)?.remarks?.[3]).toBe(
      '1 of these cells was edited since, Quote!E13 among them: what was typed there is lost.',
    );
  });
});

describe('a copy for a customer, where no file can be saved', () => {
  it('says which sheets are still to be deleted', async () => {
    await show(quoteBook());
    await click('Preview the copy', 1);
    expect(text()).toContain('Then delete these sheets yourself, since the pane could not undo that: Shop.');
    expect(text()).toContain('Inspect Document');
  });
});

describe('copies where the file can be saved', () => {
  const copy: MadeCopy = {
    bytes: new Uint8Array(),
    formulas: 345,
    sheets: ['<b>Shop</b>'],
    names: ['ShopStamp'],
    parts: ['xl/webextensions/taskpanes.xml'],
    emptied: ['Quote, Note'],
    stays: ['Hidden sheets: Costs.'],
  };
  const install = (make: () => Promise<MadeCopy>) => {
    const maker = { make: vi.fn(make), save: vi.fn(() => Promise.resolve('The copy is saved.')) };
    Object.assign(globalThis, { tonrowCopies: maker });
    return maker;
  };

  it('show what is in them and what is not before anything is saved', async () => {
    const maker = install(() => Promise.resolve(copy));
    await show(quoteBook());
    await click('Preview the copy', 1);
    const listed = [...page.querySelectorAll('li')].map(({ textContent }) => textContent);
    expect(listed).toEqual([
      '345 formulas: their values stay',
      'the sheet <b>Shop</b>',
      'the name ShopStamp',
      'what the checks say in the column Quote, Note',
      'the prompt for an add-in when the file is opened',
      'every other value the cells show',
      expect.stringContaining('notes name your presses and their limits'),
      'Hidden sheets: Costs.',
    ]);
    expect(maker.save).not.toHaveBeenCalled();
    await click('Make values copy');
    expect(maker.save).toHaveBeenCalledWith(copy, 'customer');
    expect(text()).toContain('The copy is saved.');
  });

  it('for a customer leave out what is ticked, and are previewed again when a box changes', async () => {
    const maker = install(() => Promise.resolve({ ...copy }));
    await show(quoteBook());
    const boxes = () => [...page.querySelectorAll<HTMLInputElement>('fieldset input[type=checkbox]')];
    const tick = async (at: number) => {
      await act(async () => boxes()[at]?.click());
      await settled();
    };
    await tick(2);
    await click('Preview the copy', 1);
    expect(maker.make).toHaveBeenLastCalledWith('customer', ['note', 'governs', 'open']);
    await tick(5);
    expect(text()).toContain('The boxes have changed since this copy.');
    expect(buttons('Make values copy')).toHaveLength(0);
    await click('Preview the copy again');
    expect(maker.make).toHaveBeenLastCalledWith(
      'customer',
      expect.arrayContaining(['note', 'minutes', 'cost', 'basis']),
    );
    expect(buttons('Make values copy')).toHaveLength(1);
    await tick(0);
    expect(
      boxes()
        .slice(1)
        .every(({ disabled, checked }) => disabled && checked),
    ).toBe(true);
  });

  it('keep the focus from one button to the next', async () => {
    install(() => Promise.resolve(copy));
    await show(quoteBook());
    buttons('Preview the copy')[1]?.focus();
    await click('Preview the copy', 1);
    expect(document.activeElement?.textContent).toBe('Not in the copy');
    buttons('Cancel')[0]?.focus();
    await click('Cancel');
    expect(document.activeElement?.textContent).toBe('Preview the copy');
  });

  it('show why one could not be made', async () => {
    const refused = Object.assign(new Error('2 formulas have no value in the file.'), {
      name: 'WorkbookRefused',
    });
    install(() => Promise.reject(refused));
    await show(quoteBook());
    await click('Preview the copy');
    expect(page.querySelector('[role=alert]')?.textContent).toBe('2 formulas have no value in the file.');
    expect(buttons('Make values copy')).toHaveLength(0);
  });

  it('are made again where the workbook was changed since', async () => {
    const maker = install(() => Promise.resolve({ ...copy }));
    const book = quoteBook();
    await show(book);
    await click('Preview the copy');
    act(() => void book.type('Quote', listRow + 1, 1, [[7]]));
    expect(text()).toContain('The workbook has changed since this copy.');
    expect(buttons('Make values copy')).toHaveLength(0);
    await click('Preview the copy again');
    expect(text()).not.toContain('changed since');
    expect(maker.make).toHaveBeenCalledTimes(2);
  });

  it('can be left', async () => {
    const maker = install(() => Promise.resolve(copy));
    await show(quoteBook());
    await click('Preview the copy');
    await click('Cancel');
    expect(buttons('Preview the copy')).toHaveLength(2);
    expect(maker.save).not.toHaveBeenCalled();
  });
});

describe('the report', () => {
  it('is shown as a page without scripts, and can be printed and saved', async () => {
    await show(quoteBook());
    await click('Make report');
    const frame = page.querySelector('iframe');
    expect(frame?.getAttribute('sandbox')).toBe('allow-same-origin allow-modals');
    expect(frame?.srcdoc).toContain('Press check of the parts');
    expect(buttons('Print report')).toHaveLength(1);
    expect(page.querySelector('a')?.download).toBe('press-check.html');
  });

  it('says when the workbook was changed since', async () => {
    const book = quoteBook();
    await show(book);
    await click('Make report');
    expect(text()).not.toContain('changed since');
    act(() => void book.type('Quote', listRow + 1, 1, [[7]]));
    expect(text()).toContain('The workbook has changed since this report.');
    await click('Refresh report');
    expect(text()).not.toContain('changed since');
  });

  it('says that there is no list', async () => {
    const book = quoteBook();
    await show(book);
    book.memory.tables.splice(2, 1);
    await click('Make report');
    expect(text()).toContain('There is no list of parts to report');
    expect(page.querySelector('iframe')).toBeNull();
  });
});

describe('the stamp', () => {
  it.each<[ShopState, string]>([
    [{ kind: 'none' }, 'This workbook has no shop sheet, so there is no stamp'],
    [{ kind: 'broken', message: 'The cell is empty.' }, 'there is no stamp: The cell is empty.'],
    [{ kind: 'loading' }, 'Reading the shop'],
  ])('is missing with its reason', async (state, sentence) => {
    await show(quoteBook(), state);
    expect(text()).toContain(sentence);
  });

  it('is told with what the sheet still shows', async () => {
    const book = quoteBook();
    const state = await readShopState(book);
    if (state.kind !== 'ready') throw new Error('no shop');
    await show(book);
    expect(text()).toContain(`${state.shop.stamp}. Whoever has the same stamp has the same numbers.`);
    await show(book, { ...state, shown: 'in · old' });
    expect(text()).toContain('the sheet still shows results of in · old');
  });
});

it('has nothing that axe calls serious or critical', async () => {
  await show(quoteBook());
  await click('Preview the copy');
  await click('Make report');
  vi.useRealTimers();
  const { violations } = await axe.run(page, {
    iframes: false,
    rules: { 'color-contrast': { enabled: false } },
  });
  expect(violations.filter(({ impact }) => impact === 'serious' || impact === 'critical')).toEqual([]);
});
