import { readFileSync } from 'node:fs';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { benchFolder, buildBench } from '../../../scripts/bench.mjs';
import { serve } from '../../../scripts/serve.mjs';
import { launchChromium } from '../../support/chromium.js';
import { builtOnce } from './builtOnce.js';

/** A browser and the served page; close it when done. */
export interface Bench {
  address: string;
  browser: Browser;
  close(): Promise<void>;
}

export async function startBench(): Promise<Bench> {
  await builtOnce(benchFolder, buildBench);
  const [server, browser] = await Promise.all([serve(benchFolder), launchChromium()]);
  const close = async () => {
    await browser.close();
    await server.close();
  };
  return { address: server.address, browser, close };
}

/** The page in a window of its own, and everything that went wrong in it. */
export interface OpenPage {
  page: Page;
  /** Errors and warnings of the console, uncaught errors, failed and foreign requests, dialogs. */
  troubles: string[];
}

export async function openPage(bench: Bench, options: BrowserContextOptions = {}): Promise<OpenPage> {
  const context = await bench.browser.newContext({ viewport: { width: 1400, height: 850 }, ...options });
  context.setDefaultTimeout(90_000);
  const page = await context.newPage();
  const troubles: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) troubles.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => troubles.push(`uncaught: ${error.message}`));
  page.on('requestfailed', (request) => troubles.push(`failed: ${request.url()}`));
  page.on('request', (request) => {
    const url = request.url();
    if (!/^(?:data|blob):/.test(url) && !url.startsWith(bench.address)) troubles.push(`foreign: ${url}`);
  });
  page.on('dialog', (dialog) => {
    troubles.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  await page.goto(bench.address);
  await opened(page, 'quote.xlsx');
  await page.locator('#grid canvas').first().waitFor();
  await page.locator('#pane').getByText('rows').first().waitFor({ state: 'attached' });
  return { page, troubles };
}

/** Waits until a workbook of that name is open and no other is on its way. */
export async function opened(page: Page, name: string): Promise<void> {
  await page.locator('#frame[aria-busy=false]').waitFor({ state: 'attached' });
  await page.locator('#file-name', { hasText: name }).waitFor({ state: 'attached' });
}

/** Presses Save and gives the file that the browser gets. */
export async function savedFile(page: Page): Promise<Uint8Array> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a copy' }).click();
  return new Uint8Array(readFileSync(await (await download).path()));
}

export const workbookFile = (name: string, bytes: Uint8Array) => ({
  name,
  mimeType: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  buffer: Buffer.from(bytes),
});

/** Goes to a cell by typing its address, and types into it. */
export async function typeInto(page: Page, sheet: string, address: string, text: string): Promise<void> {
  await goTo(page, sheet, address);
  await page.keyboard.type(text, { delay: 15 });
  await page.keyboard.press('Enter');
  await pause(page);
}

export async function goTo(page: Page, sheet: string, address: string): Promise<void> {
  await page.locator('.o-sheet', { hasText: sheet }).first().click();
  const box = page.locator('#grid input.os-input').first();
  await box.click();
  await box.fill(address);
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.activeElement?.classList.contains('o-composer'));
  await pause(page);
}

/** The grid draws what a key did in the next frames; nobody types that fast. */
export const pause = (page: Page): Promise<void> => page.waitForTimeout(200);
