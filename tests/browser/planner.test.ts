// The planner as it is built, in a worker of a browser and in a thread of Node.
import { mkdtempSync, rmSync } from 'node:fs';
import { cp, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { build } from 'esbuild';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import { serve } from '../../scripts/serve.mjs';
import type { StockProblem } from '../../src/core/stock/stockProblem.js';
import { plannerThreads } from '../../src/headless/planner/plannerThreads.js';
import { type PlanInWorker, PlanQueue } from '../../src/planner/planQueue.js';
import '../contract/support/built.js';
import { launchChromium } from '../support/chromium.js';

const dist = path.join(root, 'dist');
const inNode = new PlanQueue(plannerThreads(dist)).plan;

/** The client as the pane has it, for a page without a bundler. */
async function clientScript(): Promise<string> {
  const contents = `import { planInWorker } from './src/planner/planInWorker.js'; window.planInWorker = planInWorker;`;
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: root },
    bundle: true,
    write: false,
    format: 'iife',
  });
  return outputFiles[0]?.text ?? '';
}

/** A policy as strict as that of the pane, with or without leave to run WebAssembly. */
const page = (wasm: string) =>
  `<!doctype html><meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self' ${wasm}; worker-src 'self'; connect-src 'self'"><title>planner</title><script src="ask.js"></script>`;

let folder: string;
let server: Awaited<ReturnType<typeof serve>>;
let browser: Browser;

beforeAll(async () => {
  folder = mkdtempSync(path.join(root, 'out', 'planner-'));
  for (const name of ['planner.js', 'highs.wasm']) await cp(path.join(dist, name), path.join(folder, name));
  await writeFile(path.join(folder, 'ask.js'), await clientScript());
  await writeFile(path.join(folder, 'index.html'), page("'wasm-unsafe-eval'"));
  [server, browser] = await Promise.all([serve(folder), launchChromium()]);
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
  rmSync(folder, { recursive: true, force: true });
});

type Planning = { planInWorker: PlanInWorker };

async function openPage(): Promise<Page> {
  const opened = await browser.newPage();
  await opened.goto(server.address);
  return opened;
}

const inBrowser = (opened: Page, problem: StockProblem) =>
  opened.evaluate((given) => (window as unknown as Planning).planInWorker(given), problem);

/** A small generator of its own, so that both sides are asked the same. */
function problemOf(seed: number): StockProblem {
  let state = seed * 2_654_435_761;
  const next = (most: number) => {
    state = (Math.imul(state ^ (state >>> 15), 2_246_822_519) + 3_266_489_917) >>> 0;
    return state % most;
  };
  const isMitered = seed % 4 === 3;
  const isSmall = isMitered || seed % 3 === 0;
  const lean = () => (isMitered && next(2) === 1 ? Math.PI / 4 : 0);
  return {
    // Few of those that are mitered or have two prices: many can take minutes.
    parts: Array.from({ length: isSmall ? 4 : 4 + next(8) }, () => ({
      lengthMm: 300 + next(2400),
      pieces: 1 + next(isSmall ? 3 : 12),
      leanLeftRad: lean(),
      leanRightRad: -lean(),
    })),
    stocks:
      seed % 3 === 0
        ? [
            { lengthMm: 6000, price: 61 },
            { lengthMm: 7500, price: 79 },
          ]
        : [{ lengthMm: 6000 }],
    widthMm: isMitered ? 50 : 0,
    turning: seed % 2 === 0 ? 'over and round' : 'none',
    kerfMm: 3,
    trimMm: 10,
    gripMm: 0,
    keepMm: 1000,
  };
}

/** As rails and frames have them: twenty lengths, every other one mitered, turned as flats, channels or angles may be. */
function miteredProblem(turning: StockProblem['turning']): StockProblem {
  return {
    ...problemOf(1),
    parts: Array.from({ length: 20 }, (_, at) => ({
      lengthMm: 400 + ((at * 7919) % 2903),
      pieces: 5 + (at % 9),
      leanLeftRad: at % 2 === 0 ? (Math.PI * (30 + 15 * (at % 3))) / 180 : 0,
      leanRightRad: at % 4 === 0 ? -Math.PI / 4 : 0,
    })),
    widthMm: 50,
    turning,
  };
}

/** Takes some seconds: six hundred lengths between four stocks of different price. */
const longProblem: StockProblem = {
  ...problemOf(3),
  parts: Array.from({ length: 600 }, (_, at) => ({
    lengthMm: 1501 + ((at * 7919) % 2903),
    pieces: 1 + (at % 3),
    leanLeftRad: 0,
    leanRightRad: 0,
  })),
  stocks: [5801, 7001, 8803, 11_903].map((lengthMm, at) => ({
    lengthMm,
    price: lengthMm * (1 + at / 97),
    available: 210,
  })),
};

describe('the planner in a browser', () => {
  it('answers byte for byte as in Node', async () => {
    const opened = await openPage();
    const shown: string[] = [];
    const problems = [
      ...Array.from({ length: 24 }, (_, at) => problemOf(at + 1)),
      ...(['over and round', 'round', 'none'] as const).map(miteredProblem),
    ];
    for (const [at, problem] of problems.entries()) {
      const [here, there] = [await inNode(problem), await inBrowser(opened, problem)];
      expect(there.by).toBe('solver');
      expect(JSON.stringify(there), `problem ${at + 1}`).toBe(JSON.stringify(here));
      shown.push(JSON.stringify(here));
    }
    expect(new Set(shown).size).toBe(problems.length);
    await opened.close();
  });

  it('leaves the page alone while it works, and is stopped at once, with the best plan', async () => {
    const opened = await openPage();
    const seen = await opened.evaluate(async (given) => {
      const stop = new AbortController();
      let [ticks, best] = [0, 0];
      const clock = setInterval(() => (ticks += 1), 5);
      let begun: () => void;
      const hasBegun = new Promise<void>((resolve) => (begun = resolve));
      const asked = (window as unknown as Planning).planInWorker(given, {
        signal: stop.signal,
        onBest: () => {
          best += 1;
          begun();
        },
      });
      await hasBegun;
      await new Promise((resolve) => setTimeout(resolve, 1500));
      stop.abort();
      // The next thing the page does is to take the answer: nobody waits for the worker to end.
      const soon = new Promise<undefined>((resolve) => setTimeout(() => resolve(undefined), 0));
      const plan = await Promise.race([asked, soon]);
      clearInterval(clock);
      return { ticks, best, plan };
    }, longProblem);
    expect(seen.plan?.isStopped).toBe(true);
    expect(seen.best).toBeGreaterThan(0);
    expect(seen.ticks).toBeGreaterThan(20);
    await opened.close();
  });

  it('plans by steps only, and says so, where the policy lets no WebAssembly run or its file is missing', async () => {
    const problem = problemOf(1);
    await writeFile(path.join(folder, 'strict.html'), page(''));
    const strict = await browser.newPage();
    await strict.goto(`${server.address}strict.html`);
    // A worker has the policy of its own answer: the server of this test allows WebAssembly, so the header is taken away.
    await strict.route('**/planner.js', async (route) => {
      const answer = await route.fetch();
      const headers = {
        ...answer.headers(),
        'content-security-policy': "script-src 'self'; connect-src 'self'",
      };
      await route.fulfill({ response: answer, headers });
    });
    const kept = await inBrowser(strict, problem);
    expect(kept.by).toBe('steps only');
    expect(kept.bars.length).toBeGreaterThan(0);
    await strict.close();

    const opened = await openPage();
    await rm(path.join(folder, 'highs.wasm'));
    const without = await inBrowser(opened, problem);
    await cp(path.join(dist, 'highs.wasm'), path.join(folder, 'highs.wasm'));
    expect(without).toEqual(kept);
    await opened.close();
  });
});
