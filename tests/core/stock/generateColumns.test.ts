import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Cutting } from '../../../src/core/stock/cutting.js';
import { dive } from '../../../src/core/stock/dive.js';
import { bestFit, everything } from '../../../src/core/stock/fitDecreasing.js';
import { generateColumns } from '../../../src/core/stock/generateColumns.js';
import { incumbent } from '../../../src/core/stock/incumbent.js';
import { openMaster } from '../../../src/core/stock/master.js';
import { patternOf } from '../../../src/core/stock/patterns.js';
import { countWork } from '../../../src/core/stock/work.js';
import { loadSolver } from '../../../src/planner/highs.js';
import { dot, everyFill, smallCuttings } from './support.js';

const solver = await loadSolver();
const until = { bound: Infinity, rounds: Infinity, isExact: true };

/** The least cost of parts of bars, with every pattern there is. */
function leastOfParts(cutting: Cutting): number {
  const { items, stocks } = cutting;
  const sizes = items.map(({ size }) => size);
  const program = solver.open(items.map(({ demand }) => ({ least: demand, most: Infinity })));
  for (const { capacity, cost } of stocks) {
    const fitting = everyFill(cutting).filter((fill) => dot(fill, sizes) <= capacity);
    program.add(
      fitting.map((fill) => {
        const { items: rows, counts: values } = patternOf(0, fill);
        return { cost, rows, values, most: Infinity };
      }),
    );
  }
  const objective = program.solve()?.objective ?? NaN;
  program.dispose();
  return objective;
}

test('the bound of generated columns is the least of the program with every pattern', () => {
  fc.assert(
    fc.property(smallCuttings, (cutting) => {
      const work = countWork(() => false, Infinity);
      const master = openMaster(cutting, solver, everything(cutting), work);
      const bound = generateColumns(cutting, master, everything(cutting), until, work)?.dual?.bound ?? NaN;
      master.dispose();
      const least = leastOfParts(cutting);
      expect(bound).toBeLessThanOrEqual(least + 1e-9);
      expect(bound).toBeCloseTo(least, 5);
    }),
    { numRuns: 60 },
  );
});

test('dives never end with a worse plan, and leave the program as it was', () => {
  fc.assert(
    fc.property(smallCuttings, (cutting) => {
      const work = countWork(() => false, Infinity);
      const wanted = everything(cutting);
      const master = openMaster(cutting, solver, wanted, work);
      const costs: number[] = [];
      const cost = () =>
        best.packing?.runs.reduce(
          (sum, { pattern, bars }) => sum + bars * (cutting.stocks[pattern.stock]?.cost ?? NaN),
          0,
        );
      const best = incumbent(cutting, () => costs.push(cost() ?? NaN));
      for (const packing of bestFit(cutting)) best.offer(packing);
      const before = generateColumns(cutting, master, wanted, until, work)?.dual?.bound ?? NaN;
      dive(cutting, master, best, { dives: 4, work: 1e5, below: Infinity }, work);
      expect(costs).toEqual([...costs].sort((a, b) => b - a));
      expect(cost()).toBeGreaterThanOrEqual(before - 1e-6);
      expect(generateColumns(cutting, master, wanted, until, work)?.dual?.bound).toBeCloseTo(before, 5);
      master.dispose();
    }),
    { numRuns: 40 },
  );
});
