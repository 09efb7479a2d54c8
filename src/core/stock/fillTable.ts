import type { Cutting } from './cutting.js';

/** The most of pieces that are put in together; without end where `isOpen`. */
interface Lot {
  item: number;
  pieces: number;
  isOpen: boolean;
}

export interface FillTable {
  /** The most value in a bar: exact where the grid is fine and nothing is mitered, else no less than the most. */
  atMost: (capacity: number) => number;
  /** The pieces that reach it, by item; undefined where the table is coarse. */
  fillOf: (capacity: number) => Int32Array | undefined;
  cells: number;
}

/**
 * The most value of each capacity by a table over all of them (dynamic programming, bounded items in lots of doubling
 * size).
 *
 * Where the table would be too large, sizes are rounded down to a coarser grid: what fits a bar fits it then, so the
 * value is still no less than the most. What miters lose is left out, with the same effect.
 * @param cutting items by place
 * @param values whole
 * @param wanted pieces of each item
 * @param largest the largest capacity that is asked for
 * @param mostCells of the table
 * @returns the table
 * Valid for every cutting. Throws nothing.
 * @example fillTable(cutting, values, wanted, 1000, 1e7).atMost(1000)
 * Source: Bellman's knapsack table, lots after Dantzig 1957 and Martello and Toth 1990, from memory.
 */
export function fillTable(
  cutting: Cutting,
  values: ArrayLike<number>,
  wanted: ArrayLike<number>,
  largest: number,
  mostCells: number,
): FillTable {
  let step = 1;
  let lots = lotsOf(cutting, values, wanted, largest, step);
  while (lots.length * (Math.floor(largest / step) + 1) > mostCells) {
    step = Math.max(step + 1, Math.ceil((lots.length * largest) / mostCells));
    lots = lotsOf(cutting, values, wanted, largest, step);
  }
  const width = Math.floor(largest / step) + 1;
  const best = new Float64Array(width);
  const taken = new Uint8Array(lots.length * width);
  lots.forEach((lot, at) => {
    const size = sizeOf(cutting, lot.item, step) * lot.pieces;
    const value = (values[lot.item] as number) * lot.pieces;
    put(best, taken.subarray(at * width, (at + 1) * width), size, value, lot.isOpen);
  });
  return {
    atMost: (capacity) => best[Math.floor(capacity / step)] as number,
    fillOf: (capacity) => (step === 1 ? traceBack(cutting, lots, taken, width, capacity) : undefined),
    cells: lots.length * width,
  };
}

function put(best: Float64Array, taken: Uint8Array, size: number, value: number, isOpen: boolean): void {
  const width = best.length;
  if (isOpen && size > 0)
    for (let room = size; room < width; room++) {
      const other = (best[room - size] as number) + value;
      if (other <= (best[room] as number)) continue;
      best[room] = other;
      taken[room] = 1;
    }
  else
    for (let room = width - 1; room >= size; room--) {
      const other = (best[room - size] as number) + value;
      if (other <= (best[room] as number)) continue;
      best[room] = other;
      taken[room] = 1;
    }
}

function traceBack(
  cutting: Cutting,
  lots: readonly Lot[],
  taken: Uint8Array,
  width: number,
  capacity: number,
): Int32Array {
  const counts = new Int32Array(cutting.items.length);
  let room = capacity;
  for (let at = lots.length - 1; at >= 0; at--) {
    const { item, pieces, isOpen } = lots[at] as Lot;
    while (taken[at * width + room] === 1) {
      counts[item] = (counts[item] as number) + pieces;
      room -= sizeOf(cutting, item, 1) * pieces;
      if (!isOpen) break;
    }
  }
  return counts;
}

function lotsOf(
  cutting: Cutting,
  values: ArrayLike<number>,
  wanted: ArrayLike<number>,
  largest: number,
  step: number,
): Lot[] {
  const lots: Lot[] = [];
  for (let item = 0; item < cutting.items.length; item++) {
    if (!((values[item] as number) > 0)) continue;
    // Rounded sizes must not let in what the true ones keep out.
    const most = Math.min(wanted[item] as number, Math.floor(largest / sizeOf(cutting, item, 1)));
    if (most > 1 && step === 1 && most < (wanted[item] as number))
      lots.push({ item, pieces: 1, isOpen: true });
    else
      for (let rest = most, lot = 1; rest > 0; lot *= 2) {
        const pieces = Math.min(lot, rest);
        lots.push({ item, pieces, isOpen: false });
        rest -= pieces;
      }
  }
  return lots;
}

function sizeOf(cutting: Cutting, item: number, step: number): number {
  return Math.floor((cutting.items[item]?.size ?? 0) / step);
}
