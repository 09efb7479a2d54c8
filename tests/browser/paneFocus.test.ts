import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Bench, goTo, opened, openPage, startBench } from './support/benchPage.js';
import type { Page } from 'playwright-core';

let bench: Bench;
let page: Page;
beforeAll(async () => {
  bench = await startBench();
  ({ page } = await openPage(bench));
});
afterAll(() => bench.close());

const pane = () => page.locator('#pane');

/** Presses a button as the keyboard does. */
async function press(name: string | RegExp): Promise<void> {
  const button = pane().getByRole('button', { name, exact: true }).first();
  await button.focus();
  await page.keyboard.press('Enter');
}

const focused = () =>
  page.waitForFunction(() => {
    const { activeElement } = document;
    return /^H[1-4]$/.test(activeElement?.tagName ?? '') && activeElement?.textContent;
  });
const heading = async () => (await focused()).jsonValue();

it('the focus goes to the heading of a new press, and back to the presses', async () => {
  await pane().getByRole('tab', { name: 'Shop', exact: true }).click();
  await press('New press');
  expect(await heading()).toBe('New press');
  await press('Cancel');
  expect(await heading()).toContain('Bay A');
});

it('the focus goes to what a copy leaves out', async () => {
  await pane().getByRole('tab', { name: 'Hand-off', exact: true }).click();
  await pane().getByRole('button', { name: 'Preview the copy' }).first().waitFor();
  await press('Preview the copy');
  expect(await heading()).toBe('Not in the copy');
});

it('the focus goes to what a check found', async () => {
  await page.getByRole('button', { name: 'Empty workbook' }).click();
  await opened(page, 'workbook.xlsx');
  const rows = [
    ['Mark', 'Section', 'Grade', 'Length'],
    ['C1', 'FB 3/8x4', 'A36', '12'],
  ];
  for (const [row, cells] of rows.entries())
    for (const [column, text] of cells.entries()) {
      await goTo(page, 'Sheet1', `${'ABCD'[column] ?? ''}${row + 1}`);
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    }
  await goTo(page, 'Sheet1', 'A2');
  await pane().getByRole('tab', { name: 'Parts', exact: true }).click();
  await pane().getByRole('tab', { name: 'Check a list' }).click();
  await press('Use selected cells');
  await pane().getByRole('button', { name: 'Check this list' }).waitFor();
  await press('Check this list');
  expect(await heading()).toBe('What the check found');
});
