import { afterEach, describe, expect, it } from 'vitest';
import type { OpenPlanner, PlannerAnswer } from '../../src/planner/protocol.js';
import type { StockProblem } from '../../src/core/stock/stockProblem.js';
import { bundle } from './support/built.js';
import { allowsErrors, isCancelable, OfficialRuntime } from './support/officialRuntime.js';

/** A planner that answers when the test says so. */
class HeldPlanner {
  readonly asked: StockProblem[] = [];
  ended = 0;
  private hear: ((answer: PlannerAnswer) => void) | undefined;

  readonly open: OpenPlanner = (hear) => {
    this.hear = hear;
    return { ask: (problem) => void this.asked.push(problem), end: () => void (this.ended += 1) };
  };

  fail(reason: string): void {
    this.hear?.({ kind: 'failed', reason });
  }
}

let runtime: OfficialRuntime | undefined;
afterEach(() => runtime?.close());

const parts = (length: number) => [[`${length}`, 8]];
/** Options left out arrive as null. */
const call = (length: number) => ({
  id: 'STOCKBARS',
  parameters: [parts(length), [['20 ft']], 'in', 'none', 'none', 'none'] as unknown[],
});
const flags = allowsErrors | isCancelable;
const until = (holds: () => boolean) => expect.poll(holds, { timeout: 30_000 }).toBe(true);

describe('a plan that the host no longer wants', () => {
  it('is ended at once, and what is asked after it is planned', async () => {
    const planner = new HeldPlanner();
    runtime = new OfficialRuntime(bundle, (window) =>
      Object.assign(window, { tonrowOpenPlanner: planner.open }),
    );
    void runtime.callAll([call(60), call(61)], flags);
    await until(() => planner.asked.length === 1);
    expect(planner.asked[0]?.parts.map(({ lengthMm }) => lengthMm)).toEqual([60 * 25.4]);
    runtime.cancelAll();
    // The second call was waiting: it may be asked before it is canceled too, and then ends at once.
    await until(() => planner.ended > 0 && planner.ended === planner.asked.length);
    const before = planner.asked.length;
    const next = runtime.callAll([call(62)], flags);
    await until(() => planner.asked.length > before);
    expect(planner.asked.at(-1)?.parts.map(({ lengthMm }) => lengthMm)).toEqual([62 * 25.4]);
    planner.fail('The planner is away.');
    const [outcome] = await next;
    expect(outcome?.error?.message).toContain('The planner is away.');
  });
});
