import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planStock } from '../../../src/core/stock/planStock.js';
import { mostDrops } from '../../../src/core/stock/mostDrops.js';
import type { StockPlan } from '../../../src/core/stock/stockPlan.js';
import type { StockProblem } from '../../../src/core/stock/stockProblem.js';
import { countWork } from '../../../src/core/stock/work.js';
import { loadSolver } from '../../../src/planner/highs.js';
import { cuttingOf, smallProblems } from './support.js';

const solver = await loadSolver();

/** What one bar keeps with so much cut from it, in mm; undefined where it does not fit. */
function keptMm(problem: StockProblem, stock: number, cutMm: number): number | undefined {
  const { kerfMm, trimMm, gripMm, keepMm } = problem;
  const lengthMm = problem.stocks[stock]?.lengthMm ?? NaN;
  const endMm = trimMm + cutMm - kerfMm;
  if (endMm > lengthMm - (gripMm > 0 ? gripMm + kerfMm : 0) + 1e-6) return undefined;
  const restMm = lengthMm - endMm - kerfMm;
  return restMm > 1e-6 && restMm >= keepMm - 1e-6 ? restMm : 0;
}

/** The most that the same bars keep, by every way to share the same pieces among them. */
function mostKept(problem: StockProblem, { bars }: StockPlan): number {
  const stocks = bars.flatMap((bar) => new Array<number>(bar.bars).fill(bar.stock));
  const known = new Map<string, number>();
  const from = (at: number, left: readonly number[]): number => {
    const stock = stocks[at];
    if (stock === undefined) return left.every((count) => count === 0) ? 0 : -Infinity;
    const key = [at, ...left].join();
    const before = known.get(key);
    if (before !== undefined) return before;
    let most = -Infinity;
    const fill = (part: number, cutMm: number, rest: number[]) => {
      if (part < left.length) {
        for (let count = 0; count <= (left[part] ?? 0); count++) {
          const pieceMm = (problem.parts[part]?.lengthMm ?? NaN) + problem.kerfMm;
          fill(part + 1, cutMm + count * pieceMm, [...rest, (left[part] ?? 0) - count]);
        }
        return;
      }
      const kept = cutMm > 0 ? keptMm(problem, stock, cutMm) : undefined;
      if (kept !== undefined) most = Math.max(most, kept + from(at + 1, rest));
    };
    fill(0, 0, []);
    known.set(key, most);
    return most;
  };
  const cut = problem.parts.map((_, part) =>
    bars.reduce((sum, bar) => sum + bar.bars * bar.pieces.filter((piece) => piece.part === part).length, 0),
  );
  return from(0, cut);
}

describe('Drops of a plan', () => {
  test('of small problems are the most that the same bars keep, as every way to share the pieces shows', () => {
    let kept = 0;
    const problems = smallProblems({ isMitered: false }).filter(({ keepMm }) => keepMm > 0);
    fc.assert(
      fc.property(problems, (problem) => {
        const plan = planStock(problem, { solver });
        const own = plan.bars.reduce((sum, bar) => sum + (bar.isKept ? bar.restMm * bar.bars : 0), 0);
        expect(own).toBeCloseTo(Math.max(0, mostKept(problem, plan)), 4);
        if (own > 0) kept++;
      }),
      { numRuns: 120 },
    );
    expect(kept).toBeGreaterThan(30);
  });

  test('are left as they are where there are too many ways to fill the bars', () => {
    const sizes = Array.from({ length: 30 }, (_, at) => 40 - at);
    const cutting = cuttingOf({ sizes, demands: sizes.map(() => 2), capacities: [200] });
    const runs = sizes.map((_, item) => ({ pattern: { stock: 0, items: [item], counts: [2] }, bars: 1 }));
    const restOf = (room: number) => ({ rest: room, isKept: room > 100 });
    const work = countWork(() => false, Infinity);
    expect(mostDrops(cutting, { runs, short: [] }, restOf, solver, work)).toBeUndefined();
    expect(work.spent).toBeLessThan(1e5);
  });

  test('are left as they are where there are more lengths than ways that are looked at', () => {
    const sizes = Array.from({ length: 20_000 }, (_, at) => 30_000 - at);
    const cutting = cuttingOf({ sizes, capacities: [100_000] });
    const runs = sizes.map((_, item) => ({ pattern: { stock: 0, items: [item], counts: [1] }, bars: 1 }));
    const restOf = (room: number) => ({ rest: room, isKept: true });
    const work = countWork(() => false, Infinity);
    expect(mostDrops(cutting, { runs, short: [] }, restOf, solver, work)).toBeUndefined();
  });
});
