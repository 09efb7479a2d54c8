// @vitest-environment node
// Bars planned without a spreadsheet program, by the built functions and the built planner.
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import '../contract/support/built.js';
import type { StockPlan } from '../../src/core/stock/stockPlan.js';
import { builtFunctions } from '../../src/headless/functions/builtFunctions.js';
import { plannerThreads } from '../../src/headless/planner/plannerThreads.js';
import { FormulaCalculator } from '../../src/headless/recalculate/formulaCalculator.js';
import { PlanQueue } from '../../src/planner/planQueue.js';
import type { OpenPlanner } from '../../src/planner/protocol.js';

const dist = path.join(root, 'dist');

/** The built functions, and how many planners they started. */
async function functionsThatCount() {
  const functions = await builtFunctions(dist);
  const opened = { count: 0 };
  const held = globalThis as { tonrowOpenPlanner?: OpenPlanner };
  const open = held.tonrowOpenPlanner;
  held.tonrowOpenPlanner = (hear) => {
    opened.count += 1;
    return (open as OpenPlanner)(hear);
  };
  return { opened, desk: await FormulaCalculator.over(undefined, functions) };
}

describe('bars without a spreadsheet program', () => {
  it('are planned in a thread, which is not started by other functions', async () => {
    const { opened, desk } = await functionsThatCount();
    expect(await desk.evaluate('=TONROW.HOLEMIN("1/2","A36")')).toMatchObject({ value: 0.5 });
    expect(opened.count).toBe(0);
    // Counted by hand: three pieces of 5 ft and their cuts in a bar of 20 ft.
    const formula = '=TONROW.STOCKBARS({60,8},{240},"in","1/8")*10';
    expect(await desk.evaluate(formula)).toMatchObject({ value: 30 });
    expect(opened.count).toBe(1);
    const working = await desk.evaluate('=TONROW.WORKING("STOCKBARS",{60,8},{240},"in","1/8")');
    expect(JSON.stringify(working)).toContain('proven: no plan buys less');
    expect(opened.count).toBe(1);
  });

  it('are stopped at once, with the best plan so far', async () => {
    const { plan } = new PlanQueue(plannerThreads(dist));
    const stop = new AbortController();
    let isAsked = false;
    let answered: unknown;
    const soon = () => new Promise((resolve) => setImmediate(resolve));
    const asked = plan(
      {
        parts: Array.from({ length: 200 }, (_, at) => ({
          lengthMm: 1501 + ((at * 7919) % 2903),
          pieces: 1 + (at % 3),
          leanLeftRad: 0,
          leanRightRad: 0,
        })),
        stocks: [5801, 7001, 8803].map((lengthMm, at) => ({ lengthMm, price: lengthMm * (1 + at / 97) })),
        widthMm: 0,
        turning: 'over and round',
        kerfMm: 3,
        trimMm: 0,
        gripMm: 0,
        keepMm: 20_000,
      },
      {
        signal: stop.signal,
        onBest: (best: StockPlan) => {
          expect(best.bound).toBeLessThanOrEqual(best.purchase);
          if (isAsked) return;
          isAsked = true;
          stop.abort();
          // The answer is there before anything else is done: nobody waits for the thread to end.
          void Promise.race([asked, soon()]).then((first) => (answered = first));
        },
      },
    );
    expect(await asked).toMatchObject({ isStopped: true });
    await soon();
    expect(answered).toMatchObject({ isStopped: true });
  });

  it('are not planned, and say why, where the planner is missing', async () => {
    const { plan } = new PlanQueue(plannerThreads(path.join(root, 'tests')));
    const asked = plan({
      parts: [{ lengthMm: 800, pieces: 3, leanLeftRad: 0, leanRightRad: 0 }],
      stocks: [{ lengthMm: 6000 }],
      widthMm: 0,
      turning: 'none',
      kerfMm: 0,
      trimMm: 0,
      gripMm: 0,
      keepMm: 6001,
    });
    await expect(asked).rejects.toThrow('planner.mjs');
  });
});
