import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import type { Page } from 'playwright-core';
import { builtFunctions, recalculateWorkbook } from '../../src/headless/index.js';
import { opened, openPage, typeInto } from '../../tests/browser/support/benchPage.js';
import { launchChromium } from '../../tests/support/chromium.js';
import { root } from '../ensure.mjs';
import { serve } from '../serve.mjs';
import { rowCheckWorkbook } from './workbooks.mjs';

/** The longest that a task of ours is to take. */
const aimMs = 200;
const patienceMs = 900_000;

const { values } = parseArgs({ options: { rows: { type: 'string', default: '20000' } } });
const rows = Number(values.rows);

/** Notes every task that holds up the page for more than 50 ms; the browser tells no shorter ones. */
const watchTasks = `
  window.longTasks = [];
  new PerformanceObserver((list) => window.longTasks.push(...list.getEntries().map(({ duration }) => duration)))
    .observe({ type: 'longtask', buffered: true });
`;

/** The tasks since the last question. */
async function tasks(page: Page): Promise<number[]> {
  // The observer is told of a task after it.
  await page.waitForTimeout(500);
  return page.evaluate(() => (window as unknown as { longTasks: number[] }).longTasks.splice(0));
}

async function step(page: Page, name: string, act: () => Promise<unknown>): Promise<void> {
  await tasks(page);
  const began = performance.now();
  await act();
  const seconds = (performance.now() - began) / 1000;
  const long = (await tasks(page)).sort((a, b) => b - a);
  const over = long.filter((duration) => duration > aimMs);
  const longest = over.slice(0, 6).map((duration) => Math.round(duration).toLocaleString('en'));
  console.log(
    `${name}: ${seconds.toFixed(1)} s; ${over.length} tasks over ${aimMs} ms${over.length > 0 ? `, the longest ${longest.join(', ')} ms` : ''}`,
  );
}

const functions = await builtFunctions(path.join(root, 'dist'));
const { bytes } = await recalculateWorkbook(rowCheckWorkbook(rows), functions);
// Bytes would be handed over by a task of the browser's driver in the page, as long as one of ours.
const file = path.join(root, 'out', 'long.xlsx');
writeFileSync(file, bytes);
const server = await serve(path.join(root, 'out', 'page'));
const browser = await launchChromium();
const { page } = await openPage({ address: server.address, browser, close: () => browser.close() });
page.setDefaultTimeout(patienceMs);
await page.evaluate(watchTasks);
console.log(`${rows.toLocaleString('en')} rows with 4 check columns`);
await step(page, 'open', async () => {
  await page.locator('#file').setInputFiles(file);
  await opened(page, 'long.xlsx');
});
const settled = () => page.locator('#progress').waitFor({ state: 'hidden' });
await step(page, 'check what the file says, in turns', settled);
await step(page, 'edit one cell', async () => {
  await typeInto(page, 'Parts', 'C6', 'FB 3/8X4');
  await settled();
});
await step(page, 'find the list in the pane', async () => {
  await page.getByRole('tab', { name: 'Check a list' }).click();
  await page.getByRole('button', { name: 'Check this list' }).waitFor();
});
await step(page, 'check the list in the pane', async () => {
  await page.getByRole('button', { name: 'Check this list' }).click();
  await page.getByRole('list', { name: 'Rows by verdict' }).waitFor();
});
await step(page, 'edit one cell of the checked list', async () => {
  await typeInto(page, 'Parts', 'C7', 'FB 3/8X4');
  await page.getByRole('list', { name: 'Rows by verdict' }).waitFor();
});
await step(page, 'save', async () => {
  const saved = page.waitForEvent('download');
  await page.locator('#save').click();
  await saved;
});
await browser.close();
await server.close();
