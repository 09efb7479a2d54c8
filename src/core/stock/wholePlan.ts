import { costOf, mostCost, type Cutting, type Packing, type Pattern } from './cutting.js';
import { everything } from './fitDecreasing.js';
import type { LinearSolver, WholeAnswer } from './linearSolver.js';
import { columnOf, dearestOf, limitedStocks, rowsFor } from './master.js';
import { tidy } from './patterns.js';
import { wholeColumnWork, wholeIterationWork, type Work } from './work.js';

interface WholePlanLimits {
  nodes: number;
  /** About microseconds; what goes before the search is not limited. */
  work: number;
  /** Steps of cost by which a plan may be above the least. */
  nearEnough: number;
}

interface WholePlan {
  /** `none`: these patterns make no plan below the cost. */
  status: WholeAnswer['status'];
  packing: Packing | undefined;
}

/**
 * The cheapest plan of given patterns, by a search in whole numbers.
 *
 * @param cutting items and stocks
 * @param solver of linear programs
 * @param patterns each at most as often as it takes to cut all its pieces
 * @param below plans must cost less; Infinity where pieces may also be left out
 * @param limits where the search ends
 * @param work counted
 * @returns the plan, and whether it is the best of these patterns
 * Valid for every cutting. Throws nothing.
 * @example wholePlan(cutting, solver, patterns, 74, limits, work).status
 * Source: branch and bound of the solver.
 */
export function wholePlan(
  cutting: Cutting,
  solver: LinearSolver,
  patterns: readonly Pattern[],
  below: number,
  limits: WholePlanLimits,
  work: Work,
): WholePlan {
  if (patterns.length === 0) return { status: 'none', packing: undefined };
  const limited = limitedStocks(cutting);
  const rows = rowsFor(cutting, limited, everything(cutting));
  // In whole steps: of shares the solver takes those for equal that are less than a millionth apart. Where pieces are left
  // out, in dearest bars: nothing is proven then, and what a piece left out costs would be too much in steps.
  const unit = Number.isFinite(below) ? 1 : dearestOf(cutting);
  const columns = patterns.map((pattern) =>
    columnOf(cutting, limited, pattern, unit, mostOf(cutting, pattern)),
  );
  if (Number.isFinite(below)) {
    // Half a step below: costs are whole steps.
    rows.push({ least: -Infinity, most: below - 0.5 });
    const row = rows.length - 1;
    columns.forEach((column, at) => {
      columns[at] = { ...column, rows: [...column.rows, row], values: [...column.values, column.cost] };
    });
  } else columns.push(...leftOut(cutting, unit));
  const iterationWork = wholeIterationWork(rows.length + columns.length);
  const answer = solver.solveWhole(rows, columns, {
    nodes: limits.nodes,
    iterations: Math.floor(limits.work / iterationWork),
    // Costs are whole steps.
    nearEnough: Math.max(0.999, limits.nearEnough) / unit,
    isStopped: () => work.isStopped(),
  });
  work.add(columns.length * wholeColumnWork + answer.iterations * iterationWork);
  if (!answer.columns) return { status: answer.status, packing: undefined };
  const times = answer.columns;
  const runs = patterns
    .map((pattern, at) => ({ pattern, bars: Math.round(times[at] as number) }))
    .filter(({ bars }) => bars > 0);
  const packing = tidy(cutting, { runs, short: [] });
  // An answer that is not below the cost is one of rounding, and proves nothing.
  const isBelow = costOf(cutting, packing) < below;
  return { status: isBelow ? answer.status : 'stopped', packing: isBelow ? packing : undefined };
}

function mostOf(cutting: Cutting, pattern: Pattern): number {
  const times = pattern.items.map((item, k) =>
    Math.ceil((cutting.items[item]?.demand ?? 0) / (pattern.counts[k] as number)),
  );
  return Math.min(Math.max(...times), cutting.stocks[pattern.stock]?.available ?? 0);
}

/** A piece left out costs more than all bars that could be bought for it, the more the longer it is. */
function leftOut(cutting: Cutting, dearest: number) {
  const all = mostCost(cutting) / dearest + 1;
  const smallest = Math.min(...cutting.items.map((item) => item.size));
  return cutting.items.map((item, row) => ({
    cost: (all * item.size) / smallest,
    rows: [row],
    values: [1],
    most: item.demand,
  }));
}
