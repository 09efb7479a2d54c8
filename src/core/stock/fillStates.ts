import type { Cutting } from './cutting.js';
import { worthwhile, type Fill } from './knapsack.js';

interface BestFill {
  /** Undefined where nothing is worth more than the threshold. */
  fill: Fill | undefined;
  /** No fill is worth more. */
  atMost: number;
  states: number;
}

/**
 * The most valuable pieces for one bar, of each item no more than wanted, by states: the sizes and values that can be
 * reached with the items so far, without those that another beats by value at no more size, and without those that the
 * best for size among the items left cannot lift over the best.
 *
 * What miters lose is left out: then `atMost` still holds, and the fill may be too long.
 * @param cutting items by place
 * @param values whole, at least 0
 * @param wanted pieces of each item
 * @param capacity units
 * @param above only a fill worth more is found
 * @param mostStates where it gives up
 * @returns the fill; undefined where it gave up
 * Valid for every cutting. Throws nothing.
 * @example fillStates(cutting, values, wanted, capacity, 0, 1e6)?.atMost
 * Source: lists of undominated states after Nemhauser and Ullmann 1969, from memory.
 */
export function fillStates(
  cutting: Cutting,
  values: ArrayLike<number>,
  wanted: ArrayLike<number>,
  capacity: number,
  above: number,
  mostStates: number,
): BestFill | undefined {
  const lots = worthwhile(cutting, values, wanted, capacity).flatMap((item) => {
    const size = cutting.items[item]?.size ?? 1;
    const most = Math.min(wanted[item] as number, Math.floor(capacity / size));
    return lotsOf(most).map((pieces) => ({
      item,
      pieces,
      size: pieces * size,
      value: pieces * (values[item] as number),
    }));
  });
  /** Of each state that a lot made: from which, and by which lot. */
  const from: number[] = [];
  const by: number[] = [];
  let best = above;
  let bestState = -1;
  let states = 0;
  let list: States = { sizes: [0], values: [0], ids: [-1] };
  for (let at = 0; at < lots.length; at++) {
    const lot = lots[at] as (typeof lots)[number];
    const next = lots[at + 1];
    const dense = next ? (next.value / next.size) * (1 + 1e-12) : 0;
    const merged: States = { sizes: [], values: [], ids: [] };
    const count = list.sizes.length;
    let old = 0;
    let shifted = 0;
    let most = -1;
    while (old < count || shifted < count) {
      const oldSize = old < count ? (list.sizes[old] as number) : Infinity;
      const shiftedSize = shifted < count ? (list.sizes[shifted] as number) + lot.size : Infinity;
      const isOld = oldSize <= shiftedSize;
      const size = isOld ? oldSize : shiftedSize;
      if (size > capacity) break;
      const value = isOld ? (list.values[old] as number) : (list.values[shifted] as number) + lot.value;
      let id = list.ids[isOld ? old : shifted] as number;
      if (isOld) old++;
      else shifted++;
      const isBest = value > best;
      if (value <= most || (!isBest && value + Math.floor((capacity - size) * dense + 1e-9) <= best))
        continue;
      most = value;
      if (!isOld) {
        from.push(id);
        by.push(at);
        id = from.length - 1;
      }
      if (isBest) {
        best = value;
        bestState = id;
      }
      merged.sizes.push(size);
      merged.values.push(value);
      merged.ids.push(id);
    }
    states += merged.sizes.length;
    if (states > mostStates) return undefined;
    list = merged;
  }
  if (bestState < 0) return { fill: undefined, atMost: best, states };
  const counts = new Int32Array(cutting.items.length);
  for (let state = bestState; state >= 0; state = from[state] as number) {
    const { item, pieces } = lots[by[state] as number] as (typeof lots)[number];
    counts[item] = (counts[item] as number) + pieces;
  }
  return { fill: { counts, value: best }, atMost: best, states };
}

/** By rising size and value; `ids` of the last piece that was put in. */
interface States {
  sizes: number[];
  values: number[];
  ids: number[];
}

/** 1, 2, 4, … and the rest: together they make every count up to the most. */
function lotsOf(most: number): number[] {
  const lots: number[] = [];
  for (let rest = most, lot = 1; rest > 0; lot *= 2) {
    lots.push(Math.min(lot, rest));
    rest -= Math.min(lot, rest);
  }
  return lots;
}
