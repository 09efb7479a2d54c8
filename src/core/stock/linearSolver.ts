/*
 * What the planner asks of a solver of linear programs. Core knows this much of it; `src/planner/highs.ts` fits HiGHS
 * to it.
 */

/** A column: its cost, the rows it stands in, and the most of it. */
export interface LinearColumn {
  cost: number;
  rows: readonly number[];
  values: readonly number[];
  most: number;
}

export interface LinearRow {
  least: number;
  most: number;
}

export interface LinearAnswer {
  objective: number;
  columns: ArrayLike<number>;
  /** What one more of each row would cost. */
  prices: ArrayLike<number>;
  iterations: number;
}

/** A linear program that grows: the least cost of columns from 0 up to their most. */
export interface LinearProgram {
  add: (columns: readonly LinearColumn[]) => void;
  setRows: (rows: readonly LinearRow[]) => void;
  /** Undefined where the solver finds no optimum. */
  solve: () => LinearAnswer | undefined;
  dispose: () => void;
}

export interface WholeLimits {
  nodes: number;
  iterations: number;
  /** An answer that is this near to the best possible is good enough. */
  nearEnough: number;
  /** Asked from time to time. */
  isStopped: () => boolean;
}

export interface WholeAnswer {
  /** `none`: no whole numbers fit. `stopped`: at a limit, with or without columns. */
  status: 'best' | 'none' | 'stopped';
  columns: ArrayLike<number> | undefined;
  iterations: number;
}

export interface LinearSolver {
  open: (rows: readonly LinearRow[]) => LinearProgram;
  /** The least cost of whole numbers of columns. */
  solveWhole: (
    rows: readonly LinearRow[],
    columns: readonly LinearColumn[],
    limits: WholeLimits,
  ) => WholeAnswer;
}
