// @vitest-environment jsdom
import { beforeEach, expect, it } from 'vitest';
import { inTurns, Stopped } from '../../../src/bench/page/inTurns.js';
import { Progress } from '../../../src/bench/page/progress.js';
import type { Pausing } from '../../../src/xlsx/pausing.js';

let line: HTMLElement;
let progress: Progress;
const button = () => line.querySelector('button') as HTMLButtonElement;
const text = () => line.querySelector('.text')?.textContent;
beforeEach(() => {
  document.body.innerHTML =
    '<div id="line" hidden><span class="text"></span><progress></progress><button>Stop</button></div>';
  line = document.querySelector('#line') as HTMLElement;
  progress = new Progress(line);
});

/** Rests so often. */
function* resting(times: number, done: () => void): Pausing<string> {
  for (let rest = 0; rest < times; rest++) {
    done();
    const until = performance.now() + 15;
    while (performance.now() < until);
    yield;
  }
  return 'done';
}

it('says how far the work is, holds it, and lets it go on', async () => {
  let steps = 0;
  const work = inTurns(
    resting(12, () => steps++),
    {
      progress: () => progress.tell('Checking formulas', { done: steps, total: 1200 }),
      gate: () => progress.gate(),
    },
  );
  await expect.poll(() => line.hidden).toBe(false);
  button().click();
  await new Promise((resolve) => setTimeout(resolve, 100));
  const held = steps;
  await new Promise((resolve) => setTimeout(resolve, 100));
  expect(steps).toBe(held);
  expect(held).toBeLessThan(12);
  expect(text()).toMatch(/^Stopped: 1,1\d\d formulas are not checked yet$/);
  expect(button().textContent).toBe('Go on');
  button().click();
  expect(await work).toBe('done');
  progress.end();
  expect(line.hidden).toBe(true);
});

it('ends work that is not held', async () => {
  const stop = new AbortController();
  let steps = 0;
  const work = inTurns(
    resting(100, () => steps++),
    { signal: stop.signal, progress: () => progress.tellOf('Opening quote.xlsx', () => stop.abort()) },
  );
  await expect.poll(() => text()).toBe('Opening quote.xlsx');
  button().click();
  await expect(work).rejects.toBeInstanceOf(Stopped);
  expect(steps).toBeLessThan(100);
});
