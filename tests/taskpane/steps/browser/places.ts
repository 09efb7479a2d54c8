import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import axe from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import webpack from 'webpack';
import { root } from '../../../../scripts/ensure.mjs';
import { serve } from '../../../../scripts/serve.mjs';
import { paneConfig } from '../../../../webpack.pane.config.mjs';
import { launchChromium } from '../../../support/chromium.js';

const folder = path.join(root, 'out/placesPage');
const shots = path.join(root, 'out/shots');

/** The policy that the pane is shipped with. */
const policy =
  /content="(default-src[^"]+)"/.exec(readFileSync(path.join(root, 'manifest/taskpane.html'), 'utf8'))?.[1] ??
  '';
const html = `<!doctype html><html lang="en"><head><meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}"><title>Tonrow</title></head>
<body><div id="pane"></div><script src="page.js"></script></body></html>`;

function build(): Promise<void> {
  const entry = { page: path.join(root, 'tests/taskpane/steps/browser/page.tsx') };
  const config = paneConfig({ entry, output: folder });
  return new Promise((resolve, reject) => {
    webpack(config as webpack.Configuration, (error, stats) => {
      if (error) reject(error);
      else if (stats?.hasErrors()) reject(new Error(stats.toString('errors-only')));
      else resolve();
    });
  });
}

export interface Look {
  name: string;
  width: number;
  dark?: boolean;
  forced?: boolean;
}

/** The pane in a browser, under the policy it is shipped with, over a quote in memory. */
export class Places {
  private constructor(
    private readonly browser: Browser,
    private readonly server: { address: string; close: () => Promise<unknown> },
  ) {}

  static async start(): Promise<Places> {
    await build();
    writeFileSync(path.join(folder, 'index.html'), html);
    mkdirSync(shots, { recursive: true });
    const [browser, server] = await Promise.all([launchChromium(), serve(folder)]);
    return new Places(browser, server);
  }

  async close(): Promise<void> {
    await this.browser.close();
    await this.server.close();
  }

  /** Opens a place with a cell selected. */
  async open(place: string, cell: [sheet: string, row: number, column: number], look: Look): Promise<Shown> {
    const context = await this.browser.newContext({
      viewport: { width: look.width, height: 800 },
      colorScheme: look.dark ? 'dark' : 'light',
      forcedColors: look.forced ? 'active' : 'none',
      reducedMotion: 'reduce',
    });
    const page = await context.newPage();
    const errors: string[] = [];
    page.on('pageerror', ({ message }) => errors.push(message));
    page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
    await page.goto(`${this.server.address}index.html`);
    await page.getByRole('tab', { name: place, exact: true }).click();
    await page.evaluate(([sheet, row, column]) => {
      window.quoteBook.select({ sheet, row, column, rows: 1, columns: 1 });
    }, cell);
    return new Shown(page, errors, look);
  }
}

export class Shown {
  constructor(
    readonly page: Page,
    readonly errors: readonly string[],
    private readonly look: Look,
  ) {}

  async says(text: string | RegExp): Promise<void> {
    await this.page.getByText(text).first().waitFor();
  }

  async click(name: string, at = 0): Promise<void> {
    await this.page.getByRole('button', { name, exact: true }).nth(at).click();
  }

  /** What axe finds serious or critical, contrast included, and whether anything is wider than the pane. */
  async faults(): Promise<string[]> {
    await this.page.waitForTimeout(150);
    await this.page.evaluate(axe.source);
    const found = await this.page.evaluate(async () => {
      const { axe: runner } = window as unknown as { axe: typeof axe };
      const { violations } = await runner.run(document, { resultTypes: ['violations'], iframes: false });
      return violations
        .filter(({ impact }) => impact === 'serious' || impact === 'critical')
        .map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html.slice(0, 160)).join(' | ')}`);
    });
    const wider = await this.page.evaluate(() => {
      const { scrollWidth, clientWidth } = document.documentElement;
      return scrollWidth > clientWidth ? [`wider than the pane: ${scrollWidth} of ${clientWidth}`] : [];
    });
    return [...found, ...wider, ...this.errors];
  }

  async shot(name: string): Promise<void> {
    await this.page.screenshot({ path: path.join(shots, `${name}-${this.look.name}.png`), fullPage: true });
  }

  async close(): Promise<void> {
    await this.page.context().close();
  }
}
