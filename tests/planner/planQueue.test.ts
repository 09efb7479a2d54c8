import { describe, expect, it } from 'vitest';
import { planStock } from '../../src/core/stock/planStock.js';
import type { StockPlan } from '../../src/core/stock/stockPlan.js';
import type { StockProblem } from '../../src/core/stock/stockProblem.js';
import { PlannerFailed, PlanQueue, PlanStopped } from '../../src/planner/planQueue.js';
import type { PlannerAnswer } from '../../src/planner/protocol.js';

const problem = (lengthMm: number): StockProblem => ({
  parts: [{ lengthMm, pieces: 5, leanLeftRad: 0, leanRightRad: 0 }],
  stocks: [{ lengthMm: 6000 }],
  widthMm: 0,
  turning: 'over and round',
  kerfMm: 3,
  trimMm: 0,
  gripMm: 0,
  keepMm: 12_000,
});
const withSolver = (given: StockProblem): StockPlan => ({ ...planStock(given), by: 'solver' });

/** Workers that answer only when they are told to. */
class Workers {
  opened = 0;
  readonly ended: number[] = [];
  readonly asked: StockProblem[] = [];
  answer: (answer: PlannerAnswer) => void = () => undefined;
  readonly queue = new PlanQueue((hear) => {
    const number = (this.opened += 1);
    this.answer = hear;
    return { ask: (given) => this.asked.push(given), end: () => this.ended.push(number) };
  });

  done(): void {
    this.answer({ kind: 'done', plan: withSolver(this.asked.at(-1) as StockProblem) });
  }
}

describe('the queue of plans', () => {
  it('plans what is asked twice at once, and again, once', async () => {
    const workers = new Workers();
    const first = workers.queue.plan(problem(800));
    const second = workers.queue.plan(structuredClone(problem(800)));
    workers.done();
    expect(await second).toBe(await first);
    expect(await workers.queue.plan(problem(800))).toBe(await first);
    expect(workers.asked).toHaveLength(1);
  });

  it('gives one worker one problem at a time, and ends it when there is nothing to plan', async () => {
    const workers = new Workers();
    const plans = [800, 900].map((length) => workers.queue.plan(problem(length)));
    expect(workers.asked).toEqual([problem(800)]);
    workers.done();
    expect(workers.asked).toEqual([problem(800), problem(900)]);
    expect(workers.ended).toEqual([]);
    workers.done();
    await Promise.all(plans);
    expect(workers.opened).toBe(1);
    expect(workers.ended).toEqual([1]);
  });

  it('answers a stop with the best plan so far, marked, and ends the worker', async () => {
    const workers = new Workers();
    const stop = new AbortController();
    const heard: StockPlan[] = [];
    const options = { signal: stop.signal, onBest: (plan: StockPlan) => heard.push(plan) };
    const asked = workers.queue.plan(problem(800), options);
    const best = withSolver(problem(800));
    workers.answer({ kind: 'best', plan: best });
    stop.abort();
    expect(heard).toEqual([best]);
    expect(await asked).toEqual({ ...best, isStopped: true });
    expect(workers.ended).toEqual([1]);
    workers.answer({ kind: 'done', plan: best });
    void workers.queue.plan(problem(800));
    expect(workers.opened).toBe(2);
  });

  it('refuses a stop before the first plan', async () => {
    const workers = new Workers();
    const stop = new AbortController();
    const asked = workers.queue.plan(problem(800), { signal: stop.signal });
    stop.abort();
    await expect(asked).rejects.toThrow(PlanStopped);
    await expect(workers.queue.plan(problem(900), { signal: stop.signal })).rejects.toThrow(PlanStopped);
  });

  it('goes on with what somebody else still waits for', async () => {
    const workers = new Workers();
    const stop = new AbortController();
    const left = workers.queue.plan(problem(800), { signal: stop.signal });
    const kept = workers.queue.plan(problem(800));
    stop.abort();
    await expect(left).rejects.toThrow(PlanStopped);
    expect(workers.ended).toEqual([]);
    workers.done();
    expect((await kept).isStopped).toBe(false);
  });

  it('takes up the next problem when the one in work is stopped, and forgets one that waits', async () => {
    const workers = new Workers();
    const [first, second] = [new AbortController(), new AbortController()];
    const asked = [first, second].map(({ signal }, at) =>
      workers.queue.plan(problem(800 + at), { signal }).catch((error: unknown) => error),
    );
    const last = workers.queue.plan(problem(900));
    second.abort();
    first.abort();
    workers.done();
    expect(await Promise.all(asked)).toEqual([expect.any(PlanStopped), expect.any(PlanStopped)]);
    expect(workers.asked).toEqual([problem(800), problem(900)]);
    expect((await last).purchase).toBeGreaterThan(0);
  });

  it('tells why there is no plan, and starts anew for the next', async () => {
    const workers = new Workers();
    const asked = workers.queue.plan(problem(800));
    workers.answer({ kind: 'failed', reason: 'its file did not load' });
    await expect(asked).rejects.toThrow(new PlannerFailed('its file did not load'));
    const again = workers.queue.plan(problem(800));
    workers.done();
    expect((await again).by).toBe('solver');
    expect(workers.opened).toBe(2);
  });

  it('keeps no plan that was made without the solver: it may load the next time', async () => {
    const workers = new Workers();
    const asked = workers.queue.plan(problem(800));
    workers.answer({ kind: 'done', plan: planStock(problem(800)) });
    expect((await asked).by).toBe('steps only');
    void workers.queue.plan(problem(800));
    expect(workers.asked).toHaveLength(2);
  });

  it('says where no worker can be had', async () => {
    const queue = new PlanQueue(() => {
      throw new Error('there are no workers in this program');
    });
    await expect(queue.plan(problem(800))).rejects.toThrow('there are no workers in this program');
  });
});
