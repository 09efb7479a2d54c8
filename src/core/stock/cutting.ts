/*
 * A stock problem in whole units: what the planner calculates with. A pattern fits a bar where the sizes of its pieces
 * and what their miters lose between them are no more than the capacity.
 */

/** Parts that are cut alike. */
export interface Item {
  /** Of a piece along the middle of its width, with half of what each of its cuts takes; rounded up. */
  size: number;
  /** Where its faces stand on the line of faces; 0 where square. */
  left: number;
  right: number;
  demand: number;
  /** The parts of the problem, by place. */
  parts: readonly { part: number; pieces: number }[];
}

export interface StockBar {
  /** Rounded down; 0 where nothing can be cut from it. */
  capacity: number;
  /** In whole steps of the price. */
  cost: number;
  /** Infinity where as many can be had as needed. */
  available: number;
}

export interface Cutting {
  /** Largest first. */
  items: readonly Item[];
  /** By place in the problem. */
  stocks: readonly StockBar[];
  /** Where a face stands. */
  placeOf: (leanRad: number) => number;
  /** Whether a piece keeps its left face on the left. */
  isDirected: boolean;
  /** Whether no face stands anywhere but at 0. */
  isSquare: boolean;
  /** What one step of cost is, in the unit of the price or in mm. */
  costStep: number;
}

/** What is cut from one bar: items by place, and how many of each; items rising. */
export interface Pattern {
  stock: number;
  items: readonly number[];
  counts: readonly number[];
}

/** Bars that are cut alike. */
export interface PatternRun {
  pattern: Pattern;
  bars: number;
}

/** A plan in whole units. */
export interface Packing {
  runs: readonly PatternRun[];
  /** Pieces of each item that found no bar. */
  short: readonly number[];
}

export function costOf(cutting: Cutting, packing: Packing): number {
  return packing.runs.reduce((sum, { pattern, bars }) => sum + stockOf(cutting, pattern).cost * bars, 0);
}

/** Length that found no bar, in units. */
export function shortOf(cutting: Cutting, packing: Packing): number {
  return cutting.items.reduce((sum, item, i) => sum + item.size * (packing.short[i] ?? 0), 0);
}

/** The bars of each stock that can be had and that a plan could use. */
export function mostBars({ items, stocks }: Cutting): number[] {
  const pieces = items.reduce((sum, item) => sum + item.demand, 0);
  return stocks.map(({ capacity, available }) => (capacity > 0 ? Math.min(available, pieces) : 0));
}

/** Whether there is more than one length to choose from. */
export function isChoice(cutting: Cutting): boolean {
  return mostBars(cutting).filter((bars) => bars > 0).length > 1;
}

/** What all these cost: no plan without shortage costs more. */
export function mostCost(cutting: Cutting): number {
  return mostBars(cutting).reduce((sum, bars, at) => sum + bars * (cutting.stocks[at]?.cost ?? 0), 0);
}

export function stockOf(cutting: Cutting, pattern: Pattern): StockBar {
  const stock = cutting.stocks[pattern.stock];
  if (!stock) throw new RangeError(`no stock ${String(pattern.stock)}`);
  return stock;
}

/** Whether a plan leaves less out, or as little and costs less. */
export function isBetter(cutting: Cutting, one: Packing, other: Packing | undefined): boolean {
  if (!other) return true;
  const less = shortOf(cutting, one) - shortOf(cutting, other);
  return less < 0 || (less === 0 && costOf(cutting, one) < costOf(cutting, other));
}
