import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { catalog } from '../../src/functions/catalog.js';
import { presses } from '../contract/support/calls.js';
import { launchChromium } from '../support/chromium.js';
import { OfficeHost } from '../workbook/support/officeHost.js';
import { HttpsHost } from './support/httpsHost.js';
import { packagedFor } from './support/packaged.js';
import { libraryOrigin, serveScriptLibrary } from './support/scriptLibrary.js';

const row = {
  shop: [presses],
  headings: [['Mark', 'Section', 'Grade', 'Length', 'Hole', 'Edge', 'End', 'Press']],
  row: [['C1', 'FB 3/8x4', 'A36', 12, '13/16', '1-1/2', '1-1/2', 'Bay A']],
};

let browser: Browser;
let host: HttpsHost;
let context: BrowserContext;

// A page's script that tries what the policy allows and what it forbids, as code of the add-in would.
const probe = `
  const module = new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0]);
  const worker = () => new Promise((resolve, reject) => {
    const made = new Worker(new URL('probe.worker.js', document.baseURI));
    made.onmessage = ({ data }) => resolve(data);
    made.onerror = () => reject(new Error('the worker did not start'));
  });
  const outcome = (work) => Promise.resolve().then(work).then((value) => 'allowed: ' + value, (error) => 'refused: ' + error.name);
  (async () => {
    window.probed = {
      wasm: await outcome(async () => (await WebAssembly.compile(module)).constructor.name),
      worker: await outcome(worker),
      own: await outcome(async () => (await fetch('functions.json')).status),
      eval: await outcome(() => eval('1 + 1')),
      made: await outcome(() => new Function('return 1')()),
      rule: await outcome(() => {
        const style = document.head.appendChild(document.createElement('style'));
        style.sheet.insertRule('h1 { text-indent: 7px }');
        return getComputedStyle(document.querySelector('h1')).textIndent;
      }),
      styleText: await outcome(() => {
        const style = document.createElement('style');
        style.textContent = 'h1 { text-indent: 9px }';
        document.head.append(style);
        const { textIndent } = getComputedStyle(document.querySelector('h1'));
        if (textIndent !== '9px') throw new TypeError('not applied');
        return textIndent;
      }),
      foreign: await outcome(async () => (await fetch('https://example.com/')).status),
      image: await outcome(() => new Promise((resolve, reject) => {
        const image = new Image();
        image.onload = () => resolve('loaded');
        image.onerror = () => reject(new TypeError('not loaded'));
        image.src = 'https://example.com/a.png';
      })),
      inline: await outcome(() => {
        const script = document.createElement('script');
        script.textContent = 'window.inlineRan = true';
        document.head.append(script);
        if (!window.inlineRan) throw new TypeError('did not run');
        return 'ran';
      }),
    };
  })();`;
const worker = `WebAssembly.compile(new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0])).then(() => postMessage('wasm in a worker'));`;

beforeAll(async () => {
  host = await HttpsHost.start('/tonrow');
  host.files = await packagedFor(host.address);
  host.files.set('probe.js', Buffer.from(probe));
  host.files.set('probe.worker.js', Buffer.from(worker));
  browser = await launchChromium();
  context = await browser.newContext({ ignoreHTTPSErrors: true });
  await serveScriptLibrary(context);
});

afterAll(async () => {
  await browser?.close();
  await host?.close();
});

interface Visit {
  page: Page;
  errors: string[];
  requests: string[];
}

/** Opens a page of the package and notes every error and request. */
async function visit(file: string): Promise<Visit> {
  const page = await context.newPage();
  const seen: Visit = { page, errors: [], requests: [] };
  page.on('console', (message) => {
    if (message.type() === 'error') seen.errors.push(message.text());
  });
  page.on('pageerror', (error) => seen.errors.push(String(error)));
  page.on('requestfailed', (failed) => seen.errors.push(`failed: ${failed.url()}`));
  page.on('response', (response) => {
    if (response.status() >= 400) seen.errors.push(`${response.status()}: ${response.url()}`);
  });
  page.on('request', (request) => seen.requests.push(request.url()));
  await page.goto(`${host.address}/${file}`, { waitUntil: 'networkidle' });
  return seen;
}

describe('the package in a browser', () => {
  it.each(['taskpane.html', 'support.html'])(
    '%s loads under its own policy without an error',
    async (file) => {
      const { page, errors, requests } = await visit(file);
      expect(errors).toEqual([]);
      const origins = new Set(requests.map((url) => new URL(url).origin));
      expect([...origins].filter((origin) => origin !== host.origin && origin !== libraryOrigin)).toEqual([]);
      expect(requests.length).toBeGreaterThan(1);
      expect(await page.textContent('h1')).toBe('Tonrow');
      expect((await page.textContent('p'))?.length).toBeGreaterThan(20);
      await page.close();
    },
  );

  it('associates every function while the page loads, with no call for more', async () => {
    const { page, requests } = await visit('taskpane.html');
    const associated = await page.evaluate(
      () =>
        (window as unknown as { CustomFunctions: { _association: { mappings: object } } }).CustomFunctions
          ._association.mappings,
    );
    expect(Object.keys(associated)).toEqual(catalog.map(({ name }) => name));
    const scripts = requests.filter((url) => url.startsWith(host.origin) && url.endsWith('.js'));
    expect(scripts.map((url) => new URL(url).pathname)).toEqual([
      expect.stringMatching(/^\/tonrow\/functions\.[0-9a-f]{12}\.js$/),
      expect.stringMatching(/^\/tonrow\/pane\.[0-9a-f]{12}\.js$/),
    ]);
    await page.close();
  });

  it('lets wasm and a worker load, and nothing that is not its own', async () => {
    const { page, errors } = await visit('taskpane.html');
    await page.addScriptTag({ url: 'probe.js' });
    await page.waitForFunction(() => 'probed' in window);
    expect(await page.evaluate(() => (window as unknown as { probed: object }).probed)).toEqual({
      wasm: 'allowed: Module',
      worker: 'allowed: wasm in a worker',
      own: 'allowed: 200',
      rule: 'allowed: 7px',
      styleText: 'refused: TypeError',
      eval: 'refused: EvalError',
      made: 'refused: EvalError',
      foreign: 'refused: TypeError',
      image: 'refused: TypeError',
      inline: 'refused: TypeError',
    });
    expect(errors.length).toBeGreaterThan(0);
    await page.close();
  });

  it('calculates a row through the functions it registers', async () => {
    const { page, errors } = await visit('taskpane.html');
    const answer = await page.evaluate((given) => {
      type Calls = Record<string, (...values: unknown[]) => unknown>;
      const { mappings } = (window as unknown as { CustomFunctions: { _association: { mappings: Calls } } })
        .CustomFunctions._association;
      const stamp = mappings['SHOP']?.(...given.shop);
      return [stamp, mappings['ROWCHECK']?.(given.headings, given.row, stamp, 'verdict')];
    }, row);
    expect(answer).toEqual([expect.stringMatching(/^in · 2 presses · /), [[expect.any(String)]]]);
    expect(errors).toEqual([]);
    await page.close();
  });

  it('opens the pane over the real script library, the workbook behind it a double', async () => {
    const office = new OfficeHost();
    office.book.addSheet('Parts');
    const page = await context.newPage();
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(String(error)));
    await page.exposeFunction('askHost', (text: string) => {
      const { id } = JSON.parse(text) as { id: number };
      return JSON.stringify({ id, type: 2, message: office.answer(text) });
    });
    await page.addInitScript(() => {
      const bridge: {
        onMessageFromHost?: (text: string) => void;
        sendMessageToHost: (text: string) => void;
      } = {
        sendMessageToHost: (text) =>
          void (window as unknown as { askHost: (text: string) => Promise<string> })
            .askHost(text)
            .then((answer) => bridge.onMessageFromHost?.(answer)),
      };
      Object.assign(window, { _richApiNativeBridge: bridge });
    });
    // So a host tells the library who it is; the library then loads the script of that host.
    await page.goto(`${host.address}/taskpane.html?_host_Info=Excel$Win32$16.01$en-US$$$$0`);
    await page.waitForFunction(() => typeof Excel === 'object' && 'CustomFunctions' in window);
    await page.evaluate(() => {
      Object.assign(Office, {
        onReady: () => Promise.resolve({ host: Office.HostType.Excel, platform: null }),
      });
    });
    const [pane] = [...host.files.keys()].filter((name) => /^pane\.[0-9a-f]{12}\.js$/.test(name));
    await page.addScriptTag({ url: pane ?? '' });
    await page.getByText('No shop sheet in this workbook yet').waitFor();
    expect(await page.getByRole('tab').allTextContents()).toEqual([
      'Shop',
      'Parts',
      'Stock',
      'Steps',
      'Hand-off',
    ]);
    expect(errors).toEqual([]);
    await page.close();
  });

  it('lets a host keep its icons', async () => {
    const icons = [...host.files.keys()].filter((name) => name.startsWith('icons/'));
    expect(icons.length).toBeGreaterThan(3);
    for (const icon of icons) {
      const { headers } = await host.fetch(`${host.address}/${icon}`);
      expect(headers['cache-control'], icon).toMatch(/max-age=[1-9]/);
      expect(headers['cache-control'], icon).not.toMatch(/no-cache|no-store/);
    }
  });
});
