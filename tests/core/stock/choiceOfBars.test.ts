import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { choiceOfBars, type Need } from '../../../src/core/stock/choiceOfBars.js';
import { countWork } from '../../../src/core/stock/work.js';
import { loadSolver } from '../../../src/planner/highs.js';
import { cuttingOf, dot } from './support.js';

const solver = await loadSolver();
const limits = { nodes: 10_000, iterations: 100_000, isStopped: () => false };
const costs = [7, 10, 4];
const cutting = cuttingOf({
  sizes: [50],
  demands: [4],
  capacities: [100, 150, 60],
  costs,
  available: [9, 2, 9],
});
const counts = [0, 1, 2, 3, 4];
/** No more than four of each, since there are four pieces, and two of the second. */
const everyChoice = counts.flatMap((a) => [0, 1, 2].flatMap((b) => counts.map((c) => [a, b, c])));

const needs = fc.array(
  fc.record({
    worth: fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 3, maxLength: 3 }),
    needed: fc.integer({ min: 1, max: 300 }),
  }),
  { minLength: 1, maxLength: 4 },
);
const choose = (given: Need[], gone: number[][], cost: { least: number; below: number }) =>
  choiceOfBars(
    cutting,
    solver,
    given,
    gone,
    cost,
    limits,
    countWork(() => false, Infinity),
  );

describe('The cheapest bars', () => {
  test('meet every need, as of all choices the cheapest does', () => {
    fc.assert(
      fc.property(
        needs,
        fc.array(fc.constantFrom(...everyChoice), { maxLength: 2 }),
        fc.integer({ min: 0, max: 40 }),
        fc.constantFrom(60, Infinity),
        (given, gone, least, below) => {
          const fitting = everyChoice.filter((bars) => {
            const cost = dot(bars, costs);
            const isGone = gone.some((other) => bars.every((count, at) => count <= (other[at] ?? 0)));
            return (
              !isGone &&
              cost >= least &&
              cost < below &&
              given.every((need) => dot(bars, need.worth) >= need.needed)
            );
          });
          const { status, bars } = choose(given, gone, { least, below });
          expect(status).toBe(fitting.length === 0 ? 'none' : 'best');
          if (fitting.length === 0) return;
          expect(fitting).toContainEqual(bars);
          expect(dot(bars ?? [], costs)).toBe(Math.min(...fitting.map((each) => dot(each, costs))));
        },
      ),
      { numRuns: 200 },
    );
  });

  test('are not ruled out by prices that are all 0, which prove nothing', () => {
    const free = { worth: [0, 0, 0], needed: 0 };
    expect(choose([free, { worth: [1, 1, 1], needed: 2 }], [], { least: 0, below: Infinity })).toEqual({
      status: 'best',
      bars: [0, 0, 2],
    });
    expect(choose([{ worth: [0, 0, 0], needed: 1 }], [], { least: 0, below: Infinity }).status).toBe('none');
  });

  test('count by their iterations where these are many', () => {
    const work = countWork(() => false, Infinity);
    const slow = {
      ...solver,
      solveWhole: () => ({ status: 'stopped', columns: undefined, iterations: 1e5 }) as const,
    };
    choiceOfBars(cutting, slow, [], [], { least: 0, below: Infinity }, limits, work);
    expect(work.spent).toBeGreaterThan(1e7);
  });
});
