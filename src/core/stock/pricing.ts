import type { Cutting, Pattern } from './cutting.js';
import { fillStates } from './fillStates.js';
import { fillTable, type FillTable } from './fillTable.js';
import { knapsack, type Search } from './knapsack.js';
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
  const isUsed = cutting.stocks.map(({ capacity }, at) => (bars[at] as number) > 0 && capacity > 0);
  const largest = Math.max(0, ...cutting.stocks.map(({ capacity }, at) => (isUsed[at] ? capacity : 0)));
  const fills = new Fills(cutting, prices.pieces, wanted, largest, work);
  cutting.stocks.forEach(({ capacity, cost }, at) => {
    if (!isUsed[at]) return;
    const worth = cost * prices.scale - (prices.bars[at] as number);
    const best = bestFills(fills, capacity, worth);
    most[at] = best.atMost;
    for (const counts of best.counts) patterns.push(patternOf(at, counts));
  });
  return { patterns, most };
}

/** Fills of one bar worth more than a threshold, by item; no fill is worth more than `atMost`. */
interface BestFills {
  counts: Int32Array[];
  atMost: number;
}

function bestFills(fills: Fills, capacity: number, above: number): BestFills {
  const quick = fills.isTabled ? undefined : fills.search(capacity, above, nodesFirst);
  if (quick?.isComplete === true) return { counts: lastOf(quick), atMost: quick.atMost };
  const known = quick?.found.at(-1)?.value;
  const square =
    (quick && fills.byStates(capacity, known ?? above)) ?? fills.byTable(capacity, above, quick?.atMost);
  const isLong = square.isMore && !square.counts && known === undefined;
  const found = isLong ? fills.search(capacity, above, nodesLast) : quick;
  const counts = [...(square.counts ? [square.counts] : []), ...(found ? lastOf(found) : [])];
  if (found?.isComplete === true) return { counts, atMost: found.atMost };
  return { counts, atMost: Math.min(square.atMost, found?.atMost ?? Infinity) };
}

function lastOf({ found }: Search): Int32Array[] {
  return found.slice(-patternsAStock).map(({ counts }) => counts);
}

/** What is found where the loss of miters is left out. */
interface SquareFill {
  atMost: number;
  /** Whether there may be a fill worth more than the threshold. */
  isMore: boolean;
  /** Such a fill; undefined where there is none, or its miters make it too long. */
  counts: Int32Array | undefined;
}

/** The ways to look for the most valuable fill of a bar; the table serves all stocks. */
class Fills {
  private table: FillTable | undefined;

  constructor(
    private readonly cutting: Cutting,
    private readonly values: Float64Array,
    private readonly wanted: ArrayLike<number>,
    private readonly largest: number,
    private readonly work: Work,
  ) {}

  get isTabled(): boolean {
    return this.table !== undefined;
  }

  search(capacity: number, above: number, nodes: number): Search {
    const result = knapsack(this.cutting, this.values, this.wanted, capacity, above, nodes);
    this.work.add((result.nodes + this.cutting.items.length) * nodeWork(this.cutting));
    return result;
  }

  /** Undefined where the states get too many. */
  byStates(capacity: number, above: number): SquareFill | undefined {
    const result = fillStates(this.cutting, this.values, this.wanted, capacity, above, mostStates);
    this.work.add((result?.states ?? mostStates) * stateWork);
    if (!result) return undefined;
    const { atMost, fill } = result;
    return { atMost, isMore: fill !== undefined, counts: this.fitting(fill?.counts, capacity) };
  }

  byTable(capacity: number, above: number, atMost = Infinity): SquareFill {
    const table = this.tableOf();
    const most = Math.min(table.atMost(capacity), atMost);
    const isMore = most > above;
    return {
      atMost: most,
      isMore,
      counts: this.fitting(isMore ? table.fillOf(capacity) : undefined, capacity),
    };
  }

  private tableOf(): FillTable {
    if (!this.table) {
      this.table = fillTable(this.cutting, this.values, this.wanted, this.largest, mostCells);
      this.work.add(this.table.cells * cellWork);
    }
    return this.table;
  }

  private fitting(counts: Int32Array | undefined, capacity: number): Int32Array | undefined {
    const items = this.cutting.items.map((_, i) => i);
    return counts && takenBy(this.cutting, items, counts) <= capacity ? counts : undefined;
  }
}
