import { describe, expect, test } from 'vitest';
import { costOf, type Cutting, type Packing } from '../../../src/core/stock/cutting.js';
import { usualLimits } from '../../../src/core/stock/solveStock.js';
import { wholePlan } from '../../../src/core/stock/wholePlan.js';
import { countWork } from '../../../src/core/stock/work.js';
import { planStock } from '../../../src/core/stock/planStock.js';
import { loadSolver } from '../../../src/planner/highs.js';
import { cuttingOf, squareProblem } from './support.js';

const solver = await loadSolver();
const limits = { nodes: usualLimits.wholeNodes, work: usualLimits.wholeWork, nearEnough: 0 };
const plan = (cutting: Cutting, patterns: Parameters<typeof wholePlan>[2], below: number) =>
  wholePlan(
    cutting,
    solver,
    patterns,
    below,
    limits,
    countWork(() => false, Infinity),
  );

/** Pieces of the two items that are cut. */
const cutOf = ({ runs }: Packing) =>
  [0, 1].map((item) =>
    runs.reduce(
      (sum, { pattern, bars }) => sum + bars * (pattern.counts[pattern.items.indexOf(item)] ?? 0),
      0,
    ),
  );

describe('The cheapest plan of given patterns', () => {
  const cutting = cuttingOf({ sizes: [60, 40], demands: [2, 4], capacities: [100, 120], costs: [10, 11] });
  const mixed = { stock: 0, items: [0, 1], counts: [1, 1] };
  const three = { stock: 1, items: [1], counts: [3] };

  test('cuts at least what is wanted, and no more is left in it', () => {
    const { status, packing } = plan(cutting, [mixed, three], Infinity);
    expect(status).toBe('best');
    expect(packing && costOf(cutting, packing)).toBe(31);
    expect(packing && cutOf(packing)).toEqual([2, 4]);
    expect(packing?.short).toEqual([0, 0]);
  });

  test('none where the patterns make no plan below the cost, or there are no patterns', () => {
    expect(plan(cutting, [mixed, three], 32).status).toBe('best');
    expect(plan(cutting, [mixed, three], 31).status).toBe('none');
    expect(plan(cutting, [mixed], 40).status).toBe('none');
    expect(plan(cutting, [], 40).status).toBe('none');
  });

  test('leaves out as little as the bars force', () => {
    const few = cuttingOf({ sizes: [60, 40], demands: [2, 4], capacities: [100], available: [2] });
    const { packing } = plan(few, [mixed, { stock: 0, items: [1], counts: [2] }], Infinity);
    expect(packing?.short).toEqual([0, 2]);
  });

  test('prices a millionth apart are not taken for equal', () => {
    const stocks = [
      { lengthMm: 1244, price: 1000.004 },
      { lengthMm: 1078, price: 1000.001, available: 3 },
    ];
    const problem = { ...squareProblem({ 491: 3, 543: 4, 114: 3, 386: 2, 219: 2 }, stocks), trimMm: 10 };
    // 5,197 mm of pieces are more than four bars of 1,234 mm hold; of five, three at most are the cheaper ones.
    const { purchase, proof } = planStock(problem, { solver });
    expect(proof).toBeDefined();
    expect(purchase).toBeCloseTo(3 * 1000.001 + 2 * 1000.004, 6);
  });
});
