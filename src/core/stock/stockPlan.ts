/*
 * A plan: which bars, and what is cut from each. Parts and stock lengths are named by their place in the problem.
 */

export interface PlannedPiece {
  part: number;
  /** From the front end of the bar to the nearest and the farthest point of the piece. */
  startMm: number;
  endMm: number;
  /** The faces as the piece lies in the bar. */
  leanLeftRad: number;
  leanRightRad: number;
  isTurnedOver: boolean;
  isTurnedRound: boolean;
}

/** Bars that are cut alike. */
export interface PlannedBar {
  stock: number;
  bars: number;
  pieces: readonly PlannedPiece[];
  /** From the far side of the last cut, at its nearest point, to the end of the bar; grip included. */
  restMm: number;
  /** Whether the rest is worth keeping. */
  isKept: boolean;
}

export interface Shortage {
  part: number;
  pieces: number;
  /**
   * `too long`: no bar that can be had, full or not, holds the part. `not enough bars`: it is proven that the bars do
   * not suffice for all pieces. `none found`: the search found no plan with all pieces; there may be one.
   */
  why: 'too long' | 'not enough bars' | 'none found';
}

/** How it is known that no plan buys for less; undefined where a gap is left. */
export type Proof = 'by bound' | 'by patterns';

export interface StockPlan {
  bars: readonly PlannedBar[];
  shortages: readonly Shortage[];
  /** Price of the bars, or their length in mm where no prices are given. */
  purchase: number;
  /** No plan buys for less than this. */
  bound: number;
  proof: Proof | undefined;
  /** `steps only`: without the linear solver, by the heuristic alone. */
  by: 'solver' | 'steps only';
  /** Whether it was stopped, by whoever asked or by the safety net of the clock. */
  isStopped: boolean;
}
