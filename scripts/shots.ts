// Every place of the pane beside the example quote: light and dark, wide and narrow.
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { launchChromium } from '../tests/support/chromium.js';
import { root } from './ensure.mjs';
import { serve } from './serve.mjs';

const folder = path.join(root, 'out', 'shots');
mkdirSync(folder, { recursive: true });
const widths = { wide: { width: 1400, height: 900 }, narrow: { width: 320, height: 1400 } };
/** A cell of the fifth clip in the grid of the wide page. */
const cellOfAPart = { x: 320, y: 700 };

const places: [string, (page: Page) => Promise<void>][] = [
  ['part', async (page) => page.getByRole('button', { name: 'Fill in an example' }).click()],
  ['list', async (page) => page.getByRole('tab', { name: 'Check a list' }).click()],
  ['shop', async (page) => page.getByRole('tab', { name: 'Shop', exact: true }).click()],
  ['steps', async (page) => page.getByRole('tab', { name: 'Steps' }).click()],
  ['hand-off', async (page) => page.getByRole('tab', { name: 'Hand-off' }).click()],
];

const { address, close } = await serve(path.join(root, 'out', 'page'));
const browser = await launchChromium();
for (const colorScheme of ['light', 'dark'] as const) {
  for (const [name, viewport] of Object.entries(widths)) {
    const page = await browser.newPage({ viewport, colorScheme });
    await page.goto(address);
    await page.getByRole('button', { name: 'Fill in an example' }).waitFor();
    if (name === 'wide') await page.mouse.click(cellOfAPart.x, cellOfAPart.y);
    for (const [place, open] of places) {
      await open(page);
      // Places load on demand and the list is checked; nothing marks their end for a picture.
      await page.waitForTimeout(1500);
      await page.screenshot({ path: path.join(folder, `${place}-${colorScheme}-${name}.png`) });
    }
    await page.close();
  }
}
await browser.close();
await close();
console.log(`Pictures: ${path.relative(process.cwd(), folder)}`);
