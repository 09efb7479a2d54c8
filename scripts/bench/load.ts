// Packed sizes against their limits (exit code 1 over one), and the time from a page load to the first answer.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { launchChromium } from '../../tests/support/chromium.js';
import { serve } from '../serve.mjs';

const limits: Record<string, number> = { 'functions.js': 180, 'pane.js': 160 };
const aimMs = 300;
const loads = 7;
/** π · 13/16 · 3/8 in at 60 ksi, in US tons. */
const expected = (Math.PI * (13 / 16) * (3 / 8) * 60) / 2;

const folder = process.env['TONROW_ADDIN'] ?? 'out/addin';
const packed = (name: string) => gzipSync(readFileSync(path.join(folder, name))).length / 1024;

let broken = false;
for (const name of readdirSync(folder).filter((each) => each.endsWith('.js'))) {
  const size = packed(name);
  const limit = limits[name];
  const against = limit === undefined ? 'on demand' : `${(size / limit).toFixed(2)} of ${limit} KB`;
  broken ||= limit !== undefined && size > limit;
  if (limit !== undefined || size > 5)
    console.log(`${size.toFixed(1).padStart(6)} KB packed  ${name}  (${against})`);
}

// A stand-in for the host's page: its own script library is not part of what is measured, nor is the pane.
writeFileSync(
  path.join(folder, 'load.html'),
  `<!doctype html><meta charset="utf-8"><title>load</title><script src="host.js"></script><script src="functions.js"></script>`,
);
writeFileSync(
  path.join(folder, 'host.js'),
  `window.called = {}; window.CustomFunctions = { Error: class extends Error {}, ErrorCode: {}, associate: (id, call) => { window.called[id] = call; if (id === 'PUNCHFORCE') { queueMicrotask(() => { window.answer = call('13/16', '3/8', 'A36'); window.answered = performance.now(); }); } } };`,
);
const { address, close } = await serve(folder);
const browser = await launchChromium();
const times: number[] = [];
for (let load = 0; load < loads; load++) {
  const page = await browser.newPage();
  await page.goto(`${address}load.html`);
  await page.waitForFunction(() => 'answered' in window);
  const { answer, answered } = await page.evaluate(() => {
    const seen = window as unknown as { answer: number; answered: number };
    return { answer: seen.answer, answered: seen.answered };
  });
  if (Math.abs(answer - expected) > 0.001)
    throw new Error(`the function answered ${answer}, not ${expected}`);
  times.push(answered);
  await page.close();
}
await browser.close();
await close();
const median = times.sort((a, b) => a - b)[Math.floor(loads / 2)] ?? Number.NaN;
console.log(
  `from page load to the first answer of a function: ${median.toFixed(0)} ms, ${(median / aimMs).toFixed(2)} of the aim`,
);
process.exitCode = broken ? 1 : 0;
