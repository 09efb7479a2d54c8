// @vitest-environment jsdom
import { FluentProvider, webLightTheme } from '@fluentui/react-components';
import axe from 'axe-core';
import { act, createElement } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { punchForceN } from '../../../src/core/force/punch.js';
import { newtonPerUsTon } from '../../../src/core/quantity/units.js';
import { Working } from '../../../src/core/working/working.js';
import { readShopState } from '../../../src/taskpane/shared/readShopState.js';
import type { ShopState } from '../../../src/taskpane/shared/shopState.js';
import Steps from '../../../src/taskpane/steps/index.js';
import { WorkbookError } from '../../../src/workbook/workbookError.js';
import { fakeTime, letPass } from '../support/fakeTime.js';
import type { MemoryWorkbook } from '../support/memoryWorkbook.js';
import { cell, hostileMark, listRow, quoteBook, verdictColumn } from './quoteBook.js';

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
  Reflect.deleteProperty(globalThis, 'tonrowWorkings');
});

async function show(book: MemoryWorkbook, shop?: ShopState): Promise<void> {
  const state = shop ?? (await readShopState(book));
  const steps = createElement(Steps, { workbook: book, shop: state });
  act(() => root.render(createElement(FluentProvider, { theme: webLightTheme }, steps)));
  await settled();
}

/** The selection is read a moment after it changes. */
const settled = () => act(() => letPass(200));
const text = () => page.textContent ?? '';
const button = (name: string) =>
  [...page.querySelectorAll('button')].find(({ textContent }) => textContent === name);
const click = (name: string) =>
  act(async () => {
    const found = button(name);
    if (!found) throw new Error(`no button ${name}`);
    found.click();
  });

async function rowShown(row: number): Promise<MemoryWorkbook> {
  const book = quoteBook();
  book.selected = [cell('Quote', listRow + row, verdictColumn)];
  await show(book);
  return book;
}

describe('the steps of a row', () => {
  it('show the verdict, what governs, and the note', async () => {
    await rowShown(2);
    expect(page.querySelector('h2')?.textContent).toBe('A1');
    expect(text()).toContain('Edge short');
    expect(text()).toMatch(
      /Limited by end distance · 36% of the rating for [a-z][^·]*, \d+\.\d+ US tons · Bay A/,
    );
    expect(text()).toContain('7/8 in from the center to the left end is under 1-1/4 in');
  });

  it('show the first steps with formula, values, result and source, and all on request', async () => {
    await rowShown(2);
    const steps = () => page.querySelectorAll('section[aria-label=Working] li');
    expect(steps()).toHaveLength(6);
    const [first] = [...steps()].map(({ textContent }) => textContent);
    for (const text of [
      'Hole: edge distance by code',
      'e ≥ limit',
      '7/8 in',
      'Edge short',
      'Source: AISC 360',
    ])
      expect(first).toContain(text);
    const all = [...page.querySelectorAll('button')].find(({ textContent }) =>
      textContent?.startsWith('Show all'),
    );
    act(() => all?.click());
    expect(steps().length).toBeGreaterThan(20);
    expect(all?.getAttribute('aria-expanded')).toBe('true');
  });

  it('draw the part and the capacity of its press', async () => {
    await rowShown(2);
    const titles = [...page.querySelectorAll('figure h3')].map(({ textContent }) => textContent);
    expect(titles).toEqual(['A1 on the press', 'Holes Bay A punches in A36']);
  });

  it('say how fence and stop are set, with the numbers that the drawing has, and how long the row takes', async () => {
    await rowShown(4);
    const setup = page.querySelector('section[aria-label="Set-up"]');
    expect(setup?.querySelector('caption')?.textContent).toBe('Settings from the punch center, in');
    const rows = [...(setup?.querySelectorAll('tbody tr') ?? [])].map((row) =>
      [...row.children].map(({ textContent }) => textContent),
    );
    expect(rows).toEqual([
      ['1', '3 left', '3', '1', 'as it lies'],
      ['2', '9 left', '3', '1', 'as it lies'],
    ]);
    const texts = [...page.querySelectorAll('section[aria-label=Part] svg text')];
    const numbers = texts.map(({ textContent }) => textContent).filter((each) => /^[12]$/.test(each ?? ''));
    expect(numbers).toEqual(['1', '2']);
    // Work of 1/4 in, and 1/4 in above it; 2 mm into the die.
    expect(setup?.textContent).toContain('Punch: Upper stop 1/2 in above the top of the die, lower stop');
    expect(setup?.textContent).toContain('below the top of the die. Jog with this tool, then set.');
    expect(setup?.textContent).toContain('Lock out, punch. Lock out before hands go near the tools.');
    expect(text()).toContain('min to set up Bay A');
  });

  it('say why a row that fails is not set up', async () => {
    await rowShown(2);
    expect(page.querySelector('section[aria-label="Set-up"]')?.textContent).toBe(
      'Set-upNo steps: the verdict is Edge short.',
    );
    expect(text()).not.toContain('min to set up');
  });

  it('draw another press when it is chosen', async () => {
    await rowShown(2);
    const select = page.querySelector('select');
    act(() => {
      if (select) select.value = 'Bay B';
      select?.dispatchEvent(new Event('change', { bubbles: true }));
    });
    expect(text()).toContain('Holes Bay B punches in A36');
  });

  it('lead to the row and to its press', async () => {
    const book = await rowShown(1);
    await click('Go to row');
    await settled();
    await click('Go to Bay B');
    expect(book.visited.map(({ sheet, row, column }) => [sheet, row, column])).toEqual([
      ['Quote', listRow + 1, 0],
      ['Shop', 5, 3],
    ]);
  });

  it('follow the selection and changes of the cells', async () => {
    const book = await rowShown(2);
    act(() => book.select(cell('Quote', listRow + 4, 0)));
    await settled();
    expect(page.querySelector('h2')?.textContent).toBe('OK1');
    act(() => void book.type('Quote', listRow + 4, 0, [['OK2']]));
    await settled();
    expect(page.querySelector('h2')?.textContent).toBe('OK2');
  });

  it('show a hostile mark as text', async () => {
    await rowShown(3);
    expect(page.querySelector('img')).toBeNull();
    expect(page.querySelector('h2')?.textContent).toBe(hostileMark);
  });

  it('say that a total has nothing to check', async () => {
    await rowShown(5);
    expect(text()).toContain('This row is blank or a total');
  });
});

describe('the steps of a call', () => {
  const callShown = async () => {
    const book = quoteBook();
    book.selected = [cell('Quote', 12, 4)];
    await show(book);
    return book;
  };

  it('are those of the functions of this runtime, with the same arguments', async () => {
    const workingOf = vi.fn(() => {
      const working = new Working();
      punchForceN({ cutPerimeterMm: 100, thicknessMm: 10, shearStrengthMPa: 400 }, working);
      return { steps: working.steps, unit: 'in' as const };
    });
    const helpOf = () => ({
      purpose: 'Force to punch a hole',
      arguments: [{ label: 'Hole' }, { label: 'Thickness' }, { label: 'Grade' }, { label: 'Shop' }],
    });
    Object.assign(globalThis, { tonrowWorkings: { workingOf, helpOf } });
    await callShown();
    const facts = [...page.querySelectorAll('section[aria-label=Cell] dt')];
    expect(facts.map(({ textContent }) => textContent)).toEqual(['Hole', 'Thickness', 'Grade', 'Shop']);
    expect(facts[0]?.nextElementSibling?.textContent).toBe('13/16 B13');
    expect(text()).toContain('Force to punch a hole');
    expect(text()).toContain('The cell shows 23.9');
    expect(workingOf).toHaveBeenCalledWith('PUNCHFORCE', [
      [['13/16']],
      [['3/8']],
      [['A36']],
      [[expect.stringContaining('rules')]],
    ]);
    expect(text()).toContain('F = p · t · τ');
    expect(text()).toContain(`${(400_000 / newtonPerUsTon).toFixed(2)} US tons`);
  });

  it('say why a call was refused', async () => {
    const workingOf = () => {
      throw new Error("Hole: 'x' is not a hole.");
    };
    Object.assign(globalThis, { tonrowWorkings: { workingOf, helpOf: () => undefined } });
    await callShown();
    expect(text()).toContain("Hole: 'x' is not a hole.");
    expect(text()).toContain('Argument 1');
  });

  it('say what to do where the functions are not here, and still draw the hole', async () => {
    await callShown();
    expect(text()).toContain('Write =TONROW.WORKING("PUNCHFORCE",…)');
    expect(text()).toContain('Ø13/16 through A36 3/8 in thick is within the 80% the shop uses on Bay A.');
  });

  it('lead to the cells of the arguments', async () => {
    const book = await callShown();
    const link = page.querySelector<HTMLElement>('[aria-label="Go to C13"]');
    await act(async () => link?.click());
    expect(book.visited).toEqual([cell('Quote', 12, 2)]);
  });
});

describe('the place without steps', () => {
  it('says what to select', async () => {
    await show(quoteBook());
    expect(text()).toContain('Select a row of a parts list');
  });

  it('says that a row needs a shop', async () => {
    const book = quoteBook();
    book.selected = [cell('Quote', listRow + 1, 0)];
    await show(book, { kind: 'none' });
    expect(text()).toContain('This workbook has no shop sheet to check against.');
    await show(book, { kind: 'broken', message: 'The cell is empty.' });
    expect(text()).toContain('The cell is empty.');
  });

  it('shows that it is reading', async () => {
    await show(quoteBook(), { kind: 'loading' });
    expect(text()).toContain('Reading what is selected');
  });

  it('shows why it could not read, and tries again', async () => {
    const book = quoteBook();
    book.selected = [cell('Quote', listRow + 2, 0)];
    const tables = vi
      .spyOn(book, 'tables')
      .mockRejectedValueOnce(new WorkbookError('busy', 'A cell is being edited.'));
    await show(book, await readShopState(quoteBook()));
    expect(page.querySelector('[role=alert]')?.textContent).toContain('A cell is being edited.');
    await click('Try again');
    await settled();
    expect(tables).toHaveBeenCalledTimes(2);
    expect(page.querySelector('h2')?.textContent).toBe('A1');
  });

  it('shows why it could not go to a cell', async () => {
    const book = await rowShown(1);
    vi.spyOn(book, 'goTo').mockRejectedValue(new WorkbookError('missing', 'There is no sheet "Quote".'));
    await click('Go to row');
    expect(page.querySelector('[role=alert]')?.textContent).toBe('There is no sheet "Quote".');
  });

  it('says when the sheet was calculated with another shop', async () => {
    const book = quoteBook();
    const state = await readShopState(book);
    if (state.kind !== 'ready') throw new Error('no shop');
    await show(book, { ...state, shown: 'in · 1 press · rules 1 · AAAA-AAAA-AAAA' });
    expect(text()).toContain('calculated with another shop');
  });
});

describe('accessibility', () => {
  it.each([
    ['a row', cell('Quote', listRow + 2, verdictColumn)],
    ['a call', cell('Quote', 12, 4)],
    ['nothing', cell('Quote', 50, 4)],
  ])('has nothing serious or critical for %s', async (_, selected) => {
    const book = quoteBook();
    book.selected = [selected];
    await show(book);
    vi.useRealTimers();
    const { violations } = await axe.run(page, { rules: { 'color-contrast': { enabled: false } } });
    expect(violations.filter(({ impact }) => impact === 'serious' || impact === 'critical')).toEqual([]);
  });
});
