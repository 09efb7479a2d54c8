// Source: the published example of the cutting stock problem with a parent roll of 5600 mm: 73 rolls at least (from
// memory). By material alone, 407,160 mm of 5600 mm make 72.7 rolls.
import { expect, test } from 'vitest';
import { planStock } from '../../../src/core/stock/planStock.js';
import { loadSolver } from '../../../src/planner/highs.js';
import { squareProblem } from '../../core/stock/support.js';

const rolls = {
  ...{ 1380: 22, 1520: 25, 1560: 12, 1710: 14, 1820: 18, 1880: 18, 1930: 20 },
  ...{ 2000: 10, 2050: 12, 2100: 14, 2140: 16, 2150: 18, 2200: 20 },
};

test('the paper rolls are cut from 73, proven by less work than a second takes', async () => {
  const limits = { work: 2e5 };
  const plan = planStock(squareProblem(rolls, [{ lengthMm: 5600 }]), { solver: await loadSolver(), limits });
  expect(plan.purchase).toBe(73 * 5600);
  expect(plan.proof).toBeDefined();
  const restMm = plan.bars.reduce((sum, bar) => sum + bar.bars * bar.restMm, 0);
  expect(restMm).toBeCloseTo(73 * 5600 - 407_160, 6);
});
