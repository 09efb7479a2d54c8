import { stockOf, type Cutting, type Pattern } from './cutting.js';
import type { LinearAnswer, LinearColumn, LinearRow, LinearSolver } from './linearSolver.js';
import { patternKey } from './patterns.js';
import type { Wanted } from './fitDecreasing.js';
import { iterationWork, type Work } from './work.js';

interface MasterAnswer {
  /** How often each pattern is cut. */
  patterns: ArrayLike<number>;
  /** Of rows: items, then limited stocks. */
  prices: ArrayLike<number>;
  /** Whether some pieces are left out. */
  isShort: boolean;
}

/** The linear program over the patterns found so far. */
export interface Master {
  patterns: readonly Pattern[];
  /** Stocks with a row of their own: few, or free. */
  limited: readonly number[];
  /** How many were new. */
  add: (patterns: readonly Pattern[]) => number;
  setWanted: (wanted: Wanted) => void;
  /** Undefined where the solver finds no optimum. */
  solve: () => MasterAnswer | undefined;
  dispose: () => void;
}

/**
 * Opens the linear program of cutting stock: the least cost of patterns that cut at least the wanted pieces from no more
 * than the bars that can be had. A piece may also be left out at a cost that no plan has, so there is always an answer.
 *
 * @param cutting items and stocks
 * @param solver of linear programs
 * @param wanted pieces and bars
 * @param work counted
 * @param limited stocks with a row of their own
 * @returns the program; whoever opens it disposes of it
 * Valid for every cutting. Throws nothing.
 * @example const master = openMaster(cutting, solver, everything(cutting), work)
 * Source: Gilmore and Gomory 1961, from memory.
 */
export function openMaster(
  cutting: Cutting,
  solver: LinearSolver,
  wanted: Wanted,
  work: Work,
  limited = limitedStocks(cutting),
): Master {
  const dearest = dearestOf(cutting);
  const rowsOf = (rest: Wanted): LinearRow[] => rowsFor(cutting, limited, rest);
  const program = solver.open(rowsOf(wanted));
  program.add(cutting.items.map((_, i) => ({ cost: 100, rows: [i], values: [1], most: Infinity })));
  const patterns: Pattern[] = [];
  const keys = new Set<string>();
  let iterations = 0;
  return {
    patterns,
    limited,
    add(more) {
      const fresh = more.filter((pattern) => {
        const key = patternKey(pattern);
        return !keys.has(key) && keys.add(key);
      });
      program.add(fresh.map((pattern) => columnOf(cutting, limited, pattern, dearest, Infinity)));
      patterns.push(...fresh);
      return fresh.length;
    },
    setWanted(rest) {
      program.setRows(rowsOf(rest));
    },
    solve() {
      const answer: LinearAnswer | undefined = program.solve();
      if (!answer) return undefined;
      iterations = answer.iterations;
      work.add((iterations + 5) * (cutting.items.length + patterns.length) * iterationWork);
      const columns = Array.from(answer.columns);
      return {
        patterns: columns.slice(cutting.items.length),
        prices: Array.from(answer.prices, (each) => each * dearest),
        isShort: columns.slice(0, cutting.items.length).some((left) => left > nothing),
      };
    },
    dispose: program.dispose,
  };
}

/** Parts of a piece that come of rounding. */
const nothing = 1e-7;

/** Costs stand in the program as shares of the dearest bar. */
export function dearestOf(cutting: Cutting): number {
  return Math.max(1, ...cutting.stocks.map((stock) => stock.cost));
}

/** Stocks with fewer bars than pieces, and those that cost nothing, whose bounds need a count. */
export function limitedStocks(cutting: Cutting): number[] {
  const pieces = cutting.items.reduce((sum, item) => sum + item.demand, 0);
  return cutting.stocks.flatMap(({ available, cost }, at) => (available < pieces || cost === 0 ? [at] : []));
}

export function rowsFor(cutting: Cutting, limited: readonly number[], { pieces, bars }: Wanted): LinearRow[] {
  const all = cutting.items.reduce((sum, item) => sum + item.demand, 0);
  return [
    ...cutting.items.map((_, i) => ({ least: pieces[i] as number, most: Infinity })),
    ...limited.map((stock) => ({ least: -Infinity, most: Math.min(bars[stock] as number, all) })),
  ];
}

export function columnOf(
  cutting: Cutting,
  limited: readonly number[],
  pattern: Pattern,
  dearest: number,
  most: number,
): LinearColumn {
  const row = limited.indexOf(pattern.stock);
  const [rows, values] =
    row < 0
      ? [pattern.items, pattern.counts]
      : [
          [...pattern.items, cutting.items.length + row],
          [...pattern.counts, 1],
        ];
  return { cost: stockOf(cutting, pattern).cost / dearest, rows, values, most };
}
