import type { Cutting } from './cutting.js';

/** What the planner may spend, counted in what it does and not in time, so that the same input gives the same plan. */
export interface Work {
  /** About microseconds of a usual machine. */
  spent: number;
  add: (amount: number) => void;
  /** Whether the clock, which is only a safety net, says to end. */
  isStopped: () => boolean;
  /** Whether to end, by the clock or because all is spent. */
  isOver: () => boolean;
}

/** A node of a knapsack search; with miters it also counts what they lose. */
export function nodeWork({ isSquare }: Cutting): number {
  return isSquare ? 0.15 : 0.2;
}
/** An item and a bar of first-fit or best-fit. */
export const fitWork = 0.01;
/** States of a knapsack. */
export const stateWork = 0.03;
/** Cells of a table of fills. */
export const cellWork = 0.002;
/** An iteration of a linear program, by rows and columns. */
export const iterationWork = 0.02;

/** A program in whole numbers: what goes before its search, by columns. */
export const wholeColumnWork = 100;
/** An iteration of its search, with all that goes with it, by rows and columns. */
export function wholeIterationWork(size: number): number {
  return 150 + 0.1 * size;
}

export function countWork(isStopped: () => boolean, most: number): Work {
  return {
    spent: 0,
    add(amount) {
      this.spent += amount;
    },
    isStopped,
    isOver() {
      return this.spent > most || isStopped();
    },
  };
}
