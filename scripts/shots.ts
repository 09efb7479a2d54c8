// Every place of the pane beside the example quote: light and dark, wide and narrow.
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { goTo } from '../tests/browser/support/benchPage.js';
import { launchChromium } from '../tests/support/chromium.js';
import { root } from './ensure.mjs';
import { serve } from './serve.mjs';

const folder = path.join(root, 'out', 'shots');
mkdirSync(folder, { recursive: true });
const widths = { wide: { width: 1120, height: 760 }, narrow: { width: 320, height: 1400 } };

/** A picture: what a person does for it on the page, and the text that is there when it is ready. */
interface Scene {
  name: string;
  ready: string | RegExp;
  show(hand: Hand): Promise<void>;
}

class Hand {
  constructor(readonly page: Page) {}

  get pane() {
    return this.page.locator('#pane');
  }

  async tab(name: string): Promise<void> {
    await this.pane.getByRole('tab', { name, exact: true }).click();
  }

  async press(name: string | RegExp): Promise<void> {
    await this.pane.getByRole('button', { name }).first().click();
  }
}

const scenes: readonly Scene[] = [
  {
    name: 'first-screen',
    ready: 'Will it run on your presses?',
    show: async ({ page }) => page.getByRole('button', { name: 'Empty workbook' }).click(),
  },
  {
    name: 'part',
    ready: /of rating/,
    show: async (hand) => {
      await hand.tab('Try one part');
      await hand.press('Fill in an example');
    },
  },
  {
    name: 'list',
    ready: 'Which press can run',
    show: async (hand) => {
      await hand.press(/No station/);
      await hand.press('Next row');
      await hand.pane.getByText('Which press can run').scrollIntoViewIfNeeded();
    },
  },
  { name: 'shop', ready: '1-1/4 in through 9/16 in', show: (hand) => hand.tab('Shop') },
  {
    name: 'press',
    ready: 'from the punch center to the frame',
    show: async (hand) => {
      await hand.tab('Shop');
      await hand.press('Edit Bay A');
      await hand.press(/^Punch:/);
    },
  },
  {
    name: 'tools',
    ready: 'New tool',
    show: async (hand) => {
      await hand.tab('Shop');
      await hand.tab('Tools');
    },
  },
  {
    name: 'settings',
    ready: 'what a bare number means',
    show: async (hand) => {
      await hand.tab('Shop');
      await hand.tab('Settings');
    },
  },
  { name: 'stock', ready: '2. Lengths to buy', show: (hand) => hand.tab('Stock') },
  {
    name: 'steps',
    ready: 'GP4 on the press',
    show: async (hand) => {
      await goTo(hand.page, 'Quote', 'D15');
      await hand.tab('Steps');
    },
  },
  {
    name: 'drawing',
    ready: 'GP3 on the press',
    show: async (hand) => {
      await goTo(hand.page, 'Quote', 'D14');
      await hand.tab('Steps');
      const figure = hand.pane.getByRole('figure').first();
      await figure.getByText('Use arrow keys').scrollIntoViewIfNeeded();
    },
  },
  {
    name: 'hand-off',
    ready: 'Not in the copy',
    show: async (hand) => {
      await hand.tab('Hand-off');
      await hand.pane.getByRole('button', { name: 'Preview the copy' }).last().click();
    },
  },
  {
    name: 'report',
    ready: 'Save as a page',
    show: async (hand) => {
      await hand.tab('Hand-off');
      await hand.press('Make report');
      await hand.pane.getByRole('button', { name: 'Print report' }).scrollIntoViewIfNeeded();
    },
  },
];

const { address, close } = await serve(path.join(root, 'out', 'page'));
const browser = await launchChromium();
for (const colorScheme of ['light', 'dark'] as const) {
  for (const [width, viewport] of Object.entries(widths)) {
    for (const { name, ready, show } of scenes) {
      const page = await browser.newPage({ viewport, colorScheme, reducedMotion: 'reduce' });
      await page.goto(address);
      const hand = new Hand(page);
      await hand.pane.getByText(/rows? fail/).waitFor();
      await show(hand);
      await hand.pane.getByText(ready).first().waitFor();
      await page.evaluate(() => document.fonts.ready);
      await page.screenshot({ path: path.join(folder, `${name}-${colorScheme}-${width}.png`) });
      await page.close();
    }
  }
}
await browser.close();
await close();
console.log(`Pictures: ${path.relative(process.cwd(), folder)}`);
