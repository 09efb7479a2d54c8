import type { Cutting, Pattern } from './cutting.js';
import { fillStates } from './fillStates.js';
import { fillTable, type FillTable } from './fillTable.js';
import { knapsack } from './knapsack.js';
import { patternOf, takenBy } from './patterns.js';
import { cellWork, nodeWork, stateWork, type Work } from './work.js';

/** Whole prices of pieces and of limited bars (at most 0), in 1 / `scale` steps of cost. */
export interface Prices {
  pieces: Float64Array;
  bars: Float64Array;
  scale: number;
}

export interface Priced {
  /** Patterns worth more than they cost. */
  patterns: Pattern[];
  /** For each stock the most that its pieces are worth: no pattern is worth more. */
  most: Float64Array;
}

const nodesFirst = 5000;
const nodesLast = 300_000;
const mostStates = 1e6;
const mostCells = 4e7;
const patternsAStock = 6;

/**
 * For each stock the patterns that are worth more than the bar at the prices of the pieces, and how much the best is
 * worth: first by branch and bound, where that gets long by states, and where those get too many by a table of all fills.
 *
 * @param cutting items and stocks
 * @param prices whole numbers, so that no rounding can make a bound wrong
 * @param wanted pieces of each item, the most in one bar
 * @param bars of each stock; those of 0 are left out
 * @param work counted
 * @returns patterns, and bounds that hold in every case
 * Valid for every cutting. Throws nothing.
 * @example price(cutting, prices, wanted, bars, work).patterns
 * Source: Gilmore and Gomory 1961 and 1963, from memory.
 */
export function price(
  cutting: Cutting,
  prices: Prices,
  wanted: ArrayLike<number>,
  bars: ArrayLike<number>,
  work: Work,
): Priced {
  const patterns: Pattern[] = [];
  const most = new Float64Array(cutting.stocks.length);
  const usable = cutting.stocks.filter((stock, at) => (bars[at] as number) > 0 && stock.capacity > 0);
  const largest = Math.max(0, ...usable.map((stock) => stock.capacity));
  let table: FillTable | undefined;
  const tableOf = () => {
    if (!table) {
      table = fillTable(cutting, prices.pieces, wanted, largest, mostCells);
      work.add(table.cells * cellWork);
    }
    return table;
  };
  const byStates = (capacity: number, above: number) => {
    const states = fillStates(cutting, prices.pieces, wanted, capacity, above, mostStates);
    work.add((states?.states ?? mostStates) * stateWork);
    return states;
  };
  cutting.stocks.forEach(({ capacity, cost }, at) => {
    if (!((bars[at] as number) > 0) || capacity <= 0) return;
    const worth = cost * prices.scale - (prices.bars[at] as number);
    const take = (counts: Int32Array) => patterns.push(patternOf(at, counts));
    const search = (nodes: number) => {
      const result = knapsack(cutting, prices.pieces, wanted, capacity, worth, nodes);
      work.add((result.nodes + cutting.items.length) * nodeWork);
      return result;
    };
    let result = table === undefined ? search(nodesFirst) : undefined;
    const states =
      result?.isComplete === false ? byStates(capacity, result.found.at(-1)?.value ?? worth) : undefined;
    if (states) {
      most[at] = Math.max(worth, states.atMost);
      const counts = states.fill?.counts;
      if (counts && fits(cutting, counts, capacity)) take(counts);
      else if (counts && !result?.found.length) result = search(nodesLast);
    } else if (result?.isComplete !== true) {
      const { atMost, fillOf } = tableOf();
      most[at] = Math.min(atMost(capacity), result?.atMost ?? Infinity);
      const counts = most[at] > worth ? fillOf(capacity) : undefined;
      if (counts && fits(cutting, counts, capacity)) take(counts);
      else if (most[at] > worth && !result?.found.length) result = search(nodesLast);
    }
    for (const { counts } of result?.found.slice(-patternsAStock) ?? []) take(counts);
    if (result) most[at] = result.isComplete ? result.atMost : Math.min(most[at] as number, result.atMost);
  });
  return { patterns, most };
}

function fits(cutting: Cutting, counts: Int32Array, capacity: number): boolean {
  const items = cutting.items.map((_, i) => i);
  return takenBy(cutting, items, counts) <= capacity;
}
