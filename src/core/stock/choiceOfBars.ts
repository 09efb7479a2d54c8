import { mostBars, type Cutting } from './cutting.js';
import { wholeIterationWork, type Work } from './work.js';
import type { LinearColumn, LinearRow, LinearSolver, WholeLimits } from './linearSolver.js';

/** What the bars of every plan hold together: Σ worth · bars ≥ needed. */
export interface Need {
  /** By stock: no pattern is worth more. */
  worth: ArrayLike<number>;
  needed: number;
}

export interface Choice {
  /** `none`: no bars below the cost meet every need. */
  status: 'best' | 'none' | 'stopped';
  /** Of each stock. */
  bars: number[] | undefined;
}

/** A row of the program; a search of many iterations counts by them. */
const choiceWork = 3000;
/** By what a need is lowered, so that no rounding of the solver makes it one that a plan does not meet. */
export const lowered = 1e-7;

/**
 * The bars that cost the least and meet every need, as a small program in whole numbers.
 *
 * @param cutting items and stocks
 * @param solver of linear programs
 * @param needs that every plan meets
 * @param gone choices that are left out, with all that have no more of any stock
 * @param cost the least that the bars may cost, and what they must cost less than
 * @param limits nodes and iterations
 * @param work counted
 * @returns the bars, by stock
 * Valid for every cutting. Throws nothing.
 * @example choiceOfBars(cutting, solver, needs, [], { least: 0, below: Infinity }, limits, work).bars
 * Source: own; needs are cuts after Benders 1962, from memory.
 */
export function choiceOfBars(
  cutting: Cutting,
  solver: LinearSolver,
  needs: readonly Need[],
  gone: readonly (readonly number[])[],
  cost: { least: number; below: number },
  limits: Omit<WholeLimits, 'nearEnough'>,
  work: Work,
): Choice {
  const most = mostBars(cutting);
  const rows: LinearRow[] = [];
  const columns = cutting.stocks.map((stock, at) => columnFor(stock.cost, most[at] as number));
  const addRow = (row: LinearRow, entries: [column: number, value: number][]) => {
    rows.push(row);
    for (const [column, value] of entries)
      if (value !== 0) {
        columns[column]?.rows.push(rows.length - 1);
        columns[column]?.values.push(value);
      }
  };
  for (const { worth, needed } of needs) {
    // Prices may all be 0.
    const largest = Math.max(...Array.from(worth)) || 1;
    const entries = most.map((_, at): [number, number] => [at, (worth[at] as number) / largest]);
    addRow({ least: (needed / largest) * (1 - lowered), most: Infinity }, entries);
  }
  // Costs are whole steps.
  const between = { least: cost.least - 0.5, most: cost.below - 0.5 };
  addRow(
    between,
    cutting.stocks.map((stock, at) => [at, stock.cost]),
  );
  for (const bars of gone) leaveOut(bars, most, columns, addRow);
  const answer = solver.solveWhole(rows, columns, { ...limits, nearEnough: 0.999 });
  const iterations = answer.iterations * wholeIterationWork(rows.length + columns.length);
  work.add(Math.max(choiceWork * rows.length, iterations));
  return {
    status: answer.status,
    bars: answer.columns && most.map((_, at) => Math.round(answer.columns?.[at] ?? 0) + 0),
  };
}

type Growing = LinearColumn & { rows: number[]; values: number[] };

function columnFor(cost: number, most: number): Growing {
  return { cost, rows: [], values: [], most };
}

/** Of at least one stock there must be more. */
function leaveOut(
  bars: readonly number[],
  most: readonly number[],
  columns: Growing[],
  addRow: (row: LinearRow, entries: [column: number, value: number][]) => void,
): void {
  const more: [number, number][] = [];
  bars.forEach((count, at) => {
    if (count >= (most[at] as number)) return;
    columns.push(columnFor(0, 1));
    const isMore = columns.length - 1;
    more.push([isMore, 1]);
    addRow({ least: 0, most: Infinity }, [
      [at, 1],
      [isMore, -(count + 1)],
    ]);
  });
  addRow({ least: 1, most: Infinity }, more);
}
