import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import axe from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll } from 'vitest';
import webpack from 'webpack';
import { root } from '../../../scripts/ensure.mjs';
import { serve } from '../../../scripts/serve.mjs';
import bundles from '../../../webpack.config.mjs';
import { paneConfig } from '../../../webpack.pane.config.mjs';
import { launchChromium } from '../../support/chromium.js';
import { builtOnce } from '../support/builtOnce.js';

/** How long anything may take to be seen: the machine may be busy with the other half of the tests. */
const patienceMs = 90_000;

const here = path.join(root, 'tests/browser/pane');
const folder = path.join(root, 'out/panePage');
const shots = path.join(root, 'out/shots');

function bundle(config: object): Promise<void> {
  return new Promise((resolve, reject) => {
    webpack(config as webpack.Configuration, (error, stats) => {
      if (error) reject(error);
      else if (stats?.hasErrors()) reject(new Error(stats.toString('errors-only')));
      else resolve();
    });
  });
}

/** The page, and beside it the planner with its solver. */
async function build(): Promise<void> {
  await bundle(paneConfig({ entry: { page: path.join(here, 'page.tsx') }, output: folder }));
  const planner = bundles.find(({ name }) => name === 'planner');
  if (!planner) throw new Error('There is no bundle of the planner.');
  await bundle({ ...planner, output: { ...planner.output, path: folder } });
  copyFileSync(fileURLToPath(import.meta.resolve('highs/runtime')), path.join(folder, 'highs.wasm'));
  const page = readFileSync(path.join(here, 'page.html'), 'utf8').replace('{{policy}}', shippedPolicy());
  writeFileSync(path.join(folder, 'index.html'), page);
  copyFileSync(path.join(root, 'manifest/pages.css'), path.join(folder, 'pages.css'));
}

/** The policy that the pane is shipped with. */
function shippedPolicy(): string {
  const page = readFileSync(path.join(root, 'manifest/taskpane.html'), 'utf8');
  const policy = /content="(default-src[^"]+)"/.exec(page)?.[1];
  if (policy === undefined) throw new Error('The shipped page has no policy.');
  return policy;
}

/** The pane alone in a browser, under the policy it is shipped with, over a workbook in memory. */
export class PaneBrowser {
  private constructor(
    private readonly browser: Browser,
    private readonly server: { address: string; close: () => Promise<unknown> },
  ) {}

  static async start(): Promise<PaneBrowser> {
    await builtOnce(folder, build);
    const [browser, server] = await Promise.all([launchChromium(), serve(folder)]);
    return new PaneBrowser(browser, server);
  }

  async close(): Promise<void> {
    await this.browser.close();
    await this.server.close();
  }

  async open(workbook: string, look: Look): Promise<OpenPane> {
    const context = await this.browser.newContext({
      viewport: { width: look.width, height: 800 },
      colorScheme: look.dark ? 'dark' : 'light',
      forcedColors: look.forced ? 'active' : 'none',
      reducedMotion: 'reduce',
    });
    context.setDefaultTimeout(patienceMs);
    const page = await context.newPage();
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') errors.push(message.text());
    });
    await page.goto(`${this.server.address}index.html?workbook=${workbook}`);
    await page.getByRole('tab', { name: 'Parts' }).waitFor();
    return new OpenPane(page, errors, look);
  }
}

export interface Look {
  name: string;
  width: number;
  dark?: boolean;
  forced?: boolean;
}

/** Every look in which a place must be as it should. */
export const everyLook: readonly Look[] = [320, 450].flatMap((width) => [
  { name: `light-${width}`, width },
  { name: `dark-${width}`, width, dark: true },
  { name: `forced-${width}`, width, forced: true },
]);

/** Starts a browser for the tests of a file; gives what opens a pane, which is closed after its test. */
export function paneTests(): (workbook: string, look: Look) => Promise<OpenPane> {
  let browser: PaneBrowser;
  let pane: OpenPane | undefined;
  beforeAll(async () => {
    browser = await PaneBrowser.start();
  });
  afterAll(() => browser.close());
  afterEach(async () => {
    await pane?.page.context().close();
    pane = undefined;
  });
  return async (workbook, look) => (pane = await browser.open(workbook, look));
}

export class OpenPane {
  constructor(
    readonly page: Page,
    readonly errors: readonly string[],
    private readonly look: Look,
  ) {}

  button(name: string | RegExp) {
    return this.page.getByRole('button', typeof name === 'string' ? { name, exact: true } : { name });
  }

  async click(name: string | RegExp): Promise<void> {
    await this.button(name).first().click();
  }

  async tab(name: string): Promise<void> {
    await this.page.getByRole('tab', { name, exact: true }).click();
  }

  async says(text: string | RegExp): Promise<void> {
    await this.page.getByText(text).first().waitFor();
  }

  /** Selects a cell, rows and columns counted from 0. */
  async select(sheet: string, row: number, column: number): Promise<void> {
    await this.page.evaluate(
      ([name, down, across]) => {
        window.tonrow.select({ sheet: name, row: down, column: across, rows: 1, columns: 1 });
      },
      [sheet, row, column] as const,
    );
  }

  /** What axe finds serious or critical, text smaller than 12 px, and whatever is wider than the pane. */
  async faults(): Promise<string[]> {
    await this.page.waitForTimeout(150); // Motion is reduced, not absent.
    await this.page.evaluate(axe.source);
    const found = await this.page.evaluate(async () => {
      const { axe: runner } = window as unknown as { axe: typeof axe };
      const { violations } = await runner.run(document, { resultTypes: ['violations'], iframes: false });
      const serious = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
      return serious.map(
        ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`,
      );
    });
    const sizes = await this.page.evaluate(() => {
      const faults: string[] = [];
      const { scrollWidth, clientWidth } = document.documentElement;
      if (scrollWidth > clientWidth) faults.push(`wider than the pane: ${scrollWidth} of ${clientWidth}`);
      const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      for (let text = texts.nextNode(); text; text = texts.nextNode()) {
        const element = text.parentElement;
        if (!element || text.textContent?.trim() === '' || element.closest('script, style')) continue;
        if (Number.parseFloat(getComputedStyle(element).fontSize) < 12)
          faults.push(`small text: ${text.textContent}`);
      }
      return faults;
    });
    return [...found, ...sizes];
  }

  async shot(name: string): Promise<void> {
    mkdirSync(shots, { recursive: true });
    await this.page.screenshot({
      path: path.join(shots, `pane-${name}-${this.look.name}.png`),
      fullPage: true,
    });
  }

  /** Moves the keyboard's focus forward until it is on what has this name, as a user without a mouse does. */
  async tabTo(name: string | RegExp): Promise<void> {
    const most = 160;
    for (let at = 0; at < most; at++) {
      await this.page.keyboard.press('Tab');
      const focused = await this.page.evaluate(() => {
        const element = document.activeElement as HTMLInputElement | null;
        if (!element || element === (document.body as HTMLElement)) return '';
        const label = element.getAttribute('aria-label') ?? element.labels?.[0]?.textContent;
        return (label ?? element.textContent ?? '').trim();
      });
      if (typeof name === 'string' ? focused === name : name.test(focused)) return;
    }
    throw new Error(`the keyboard does not reach ${String(name)}`);
  }

  /**
   * Controls that the Tab key does not reach, by name. Of tabs, toolbars and radio buttons it reaches one: arrow keys
   * go on from there.
   */
  async unreached(): Promise<string[]> {
    const wanted = await this.page.evaluate(() => {
      const inside = document.querySelector('dialog[open]') ?? document;
      const controls = [
        ...inside.querySelectorAll<HTMLElement>(
          'button, input, select, textarea, a[href], summary, [tabindex="0"]',
        ),
      ].filter(
        (element) =>
          element.checkVisibility() &&
          !element.matches(
            ':disabled, [role=tab][tabindex="-1"], [role=toolbar] [tabindex="-1"], [type=radio]:not(:checked)',
          ),
      );
      controls.forEach((element, at) => (element.dataset['reach'] = String(at)));
      (document.activeElement as HTMLElement | null)?.blur();
      return controls.map((element) =>
        (element.getAttribute('aria-label') ?? element.textContent ?? '').trim(),
      );
    });
    const reached = new Set<number>();
    // Twice round: the first may begin in the middle.
    for (let at = 0; at < 2 * wanted.length + 4 && reached.size < wanted.length; at++) {
      await this.page.keyboard.press('Tab');
      const focused = await this.page.evaluate(
        () => (document.activeElement as HTMLElement | null)?.dataset['reach'],
      );
      if (focused !== undefined) reached.add(Number(focused));
    }
    return wanted.filter((_, at) => !reached.has(at));
  }

  /** Reaches something by keyboard and presses keys on it. */
  async keys(name: string | RegExp, ...keys: string[]): Promise<void> {
    await this.tabTo(name);
    for (const key of keys) await this.page.keyboard.press(key);
  }

  /** Reaches a list of choices and types the beginning of one, as a user without a mouse does. */
  async chooseIn(name: string | RegExp, beginning: string): Promise<void> {
    await this.tabTo(name);
    await this.page.keyboard.type(beginning);
  }

  /** Reaches a field by keyboard and types. */
  async typeInto(name: string | RegExp, text: string): Promise<void> {
    await this.tabTo(name);
    await this.page.keyboard.press('Control+a');
    await this.page.keyboard.type(text);
  }
}
