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

/** What the browser notes of each task: when it began and ended, and how long the processor worked for it, in microseconds. */
interface Traced {
  name: string;
  pid: number;
  tid: number;
  dur?: number;
  tdur?: number;
  args?: { name?: string };
}

/** The tasks of the page's main thread that took longer than the aim; the longest first. */
function longTasks(trace: Buffer): Traced[] {
  const { traceEvents } = JSON.parse(trace.toString()) as { traceEvents: Traced[] };
  const threadOf = ({ pid, tid }: Traced) => `${pid} ${tid}`;
  const isMain = (event: Traced) => event.name === 'thread_name' && event.args?.name === 'CrRendererMain';
  const main = new Set(traceEvents.filter(isMain).map(threadOf));
  return traceEvents
    .filter((event) => event.name === 'ThreadControllerImpl::RunTask' && main.has(threadOf(event)))
    .filter(({ dur = 0 }) => dur > aimMs * 1000)
    .sort((a, b) => (b.dur ?? 0) - (a.dur ?? 0));
}

const whole = (microseconds = 0) => Math.round(microseconds / 1000).toLocaleString('en');

async function step(page: Page, name: string, act: () => Promise<unknown>): Promise<void> {
  await browser.startTracing(page, { categories: ['toplevel'] });
  const began = performance.now();
  await act();
  const seconds = (performance.now() - began) / 1000;
  const over = longTasks(await browser.stopTracing());
  // Others that use the processor make tasks longer, but not what it does for them.
  const longest = over.slice(0, 6).map(({ dur, tdur }) => `${whole(dur)} ms (processor ${whole(tdur)})`);
  const told = over.length > 0 ? `: ${longest.join(', ')}` : '';
  console.log(`${name}: ${seconds.toFixed(1)} s; ${over.length} tasks over ${aimMs} ms${told}`);
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
