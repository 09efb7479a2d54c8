import { describe, expect, test } from 'vitest';
import { loadSolver } from '../../src/planner/highs.js';

const solver = await loadSolver();
const limits = { nodes: 1000, iterations: 10_000, nearEnough: 0.5, isStopped: () => false };
const atLeast = (least: number) => ({ least, most: Infinity });
const atMost = (most: number) => ({ least: -Infinity, most });

describe('A linear program', () => {
  // Least 3x + 2y where x + y ≥ 4 and x + 3y ≥ 6: the corner x = 3, y = 1 or y = 4 alone, by drawing it.
  const rows = [atLeast(4), atLeast(6)];
  const x = { cost: 3, rows: [0, 1], values: [1, 1], most: Infinity };
  const y = { cost: 2, rows: [0, 1], values: [1, 3], most: Infinity };

  test('gives the least, its columns and the prices of its rows', () => {
    const program = solver.open(rows);
    program.add([x, y]);
    const answer = program.solve();
    expect(answer?.objective).toBeCloseTo(8, 9);
    expect(Array.from(answer?.columns ?? [])).toEqual([0, 4]);
    // Only the first row holds: one more of it costs one more y.
    expect(answer?.prices[0]).toBeCloseTo(2, 9);
    expect(answer?.prices[1]).toBeCloseTo(0, 9);
    program.dispose();
  });

  test('grows by columns, and takes other rows', () => {
    const program = solver.open(rows);
    program.add([x]);
    expect(program.solve()?.objective).toBeCloseTo(18, 9);
    program.add([y]);
    expect(program.solve()?.objective).toBeCloseTo(8, 9);
    program.setRows([atLeast(0), atLeast(9)]);
    expect(program.solve()?.objective).toBeCloseTo(6, 9);
    program.dispose();
  });

  test('has no answer where nothing fits, and one again when something does', () => {
    const program = solver.open([atLeast(4)]);
    program.add([{ cost: 1, rows: [0], values: [1], most: 3 }]);
    expect(program.solve()).toBeUndefined();
    program.add([{ cost: 5, rows: [0], values: [1], most: Infinity }]);
    expect(program.solve()?.objective).toBeCloseTo(8, 9);
    program.dispose();
  });

  test('is gone once it is disposed of, and others live on', () => {
    const [one, other] = [solver.open(rows), solver.open(rows)];
    other.add([y]);
    one.dispose();
    expect(() => {
      one.solve();
    }).toThrow();
    expect(other.solve()?.objective).toBeCloseTo(8, 9);
    other.dispose();
  });
});

describe('A program in whole numbers', () => {
  test('gives the least, which rounding up the parts would miss', () => {
    // 5 pieces from bars of 3 for 3 and of 2 for 2.5: 5/3 bars cost 5, two bars of 3 cost 6, one of each 5.5.
    const columns = [
      { cost: 3, rows: [0], values: [3], most: 9 },
      { cost: 2.5, rows: [0], values: [2], most: 9 },
    ];
    const answer = solver.solveWhole([atLeast(5)], columns, { ...limits, nearEnough: 0.1 });
    expect(answer.status).toBe('best');
    expect(Array.from(answer.columns ?? [])).toEqual([1, 1]);
  });

  test('says none where parts would fit and whole numbers do not', () => {
    const column = { cost: 1, rows: [0, 1], values: [2, 2], most: 9 };
    expect(solver.solveWhole([atLeast(3), atMost(3)], [column], limits).status).toBe('none');
  });

  test('tells sums apart that differ by a step of ten million', () => {
    const columns = [
      { cost: 9_999_999, rows: [0, 1], values: [1, 9_999_999], most: 9 },
      { cost: 10_000_000, rows: [0, 1], values: [1, 10_000_000], most: 9 },
    ];
    const first = solver.solveWhole([atLeast(3), atMost(3 * 9_999_999 + 0.5)], columns, limits);
    expect(Array.from(first.columns ?? [])).toEqual([3, 0]);
    expect(solver.solveWhole([atLeast(3), atMost(3 * 9_999_999 - 0.5)], columns, limits).status).toBe('none');
  });
});
