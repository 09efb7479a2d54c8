import type { Cutting } from './cutting.js';
import { miterCount } from './miterCount.js';

export interface Fill {
  /** By item. */
  counts: Int32Array;
  value: number;
}

export interface Search {
  /** Better and better fills, all above the threshold. */
  found: Fill[];
  /** No fill is worth more than this. */
  atMost: number;
  nodes: number;
  isComplete: boolean;
}

/**
 * The most valuable pieces for one bar, of each item no more than wanted: an exact bounded knapsack by branch and
 * bound, items by falling value for their size, depth first.
 *
 * Bounds: the value so far and the room filled with the best value for size among the items left. With miters there is
 * a second room, less what the faces lose so far; a further piece then counts as its size less the way between its
 * faces, the most by which it can lower the loss.
 * @param cutting items by place
 * @param values whole, at least 0; items of 0 are left out
 * @param wanted pieces of each item
 * @param capacity units
 * @param above only fills worth more are found
 * @param mostNodes where the search stops
 * @returns fills, and a bound that holds whether or not the search was complete
 * Valid for values up to 2^40. Throws nothing.
 * @example knapsack(cutting, values, wanted, capacity, 0, 30000).found.at(-1)
 * Source: branch and bound after Horowitz and Sahni 1974, from memory.
 */
export function knapsack(
  cutting: Cutting,
  values: ArrayLike<number>,
  wanted: ArrayLike<number>,
  capacity: number,
  above: number,
  mostNodes: number,
): Search {
  const order = worthwhile(cutting, values, wanted, capacity);
  const n = order.length;
  const sizes = order.map((i) => cutting.items[i]?.size ?? 1);
  const worth = order.map((i) => values[i] as number);
  const most = order.map((i) => wanted[i] as number);
  const least = fromEnd(sizes, Math.min, Infinity);
  const dense = fromEnd(
    sizes.map((size, k) => (worth[k] as number) / size),
    Math.max,
    0,
  );
  // The densest by size less the way between faces.
  const denseApart = cutting.isSquare
    ? dense
    : fromEnd(
        order.map((i) => apartDensity(cutting, values, i)),
        Math.max,
        0,
      );
  const counts = new Int32Array(n);
  const miters = cutting.isSquare ? undefined : miterCount(cutting);
  const put = (k: number, pieces: number) => {
    counts[k] = (counts[k] as number) + pieces;
    room -= pieces * (sizes[k] as number);
    value += pieces * (worth[k] as number);
    miters?.add(order[k] as number, pieces);
  };
  const found: Fill[] = [];
  let best = above;
  let room = capacity;
  let value = 0;
  let nodes = 0;
  let at = 0;
  const hopeAt = (k: number) => value + Math.floor(room * (dense[k] as number) * (1 + 1e-12) + 1e-9);
  const hopeWithLoss = (k: number, loss: number) =>
    value + Math.floor((room - loss) * (denseApart[k] as number) * (1 + 1e-12) + 1e-9);
  const isHopeless = (k: number) =>
    hopeAt(k) <= best || (miters !== undefined && value > 0 && hopeWithLoss(k, miters.loss()) <= best);
  for (;;) {
    while (at < n && room >= (least[at] as number) && !isHopeless(at)) {
      put(at, Math.min(most[at] as number, Math.floor(room / (sizes[at] as number))));
      at++;
    }
    nodes++;
    if (value > best && room >= (miters?.loss() ?? 0)) {
      best = value;
      found.push({ counts: byItem(cutting, order, counts), value });
    }
    if (nodes >= mostNodes)
      return {
        found,
        atMost: Math.floor(capacity * (dense[0] ?? 0) * (1 + 1e-12) + 1e-9),
        nodes,
        isComplete: false,
      };
    // Back to the last item that may have one piece less.
    for (at--; ; at--) {
      while (at >= 0 && counts[at] === 0) at--;
      if (at < 0) return { found, atMost: Math.max(best, above), nodes, isComplete: true };
      put(at, -1);
      if (hopeAt(at + 1) > best) break;
      // Fewer of this are worth still less.
      put(at, -(counts[at] as number));
    }
    at++;
  }
}

/** Items of any value that fit, by falling value for their size. */
export function worthwhile(
  cutting: Cutting,
  values: ArrayLike<number>,
  wanted: ArrayLike<number>,
  capacity: number,
): number[] {
  const density = (i: number) => (values[i] as number) / (cutting.items[i]?.size ?? 1);
  return cutting.items
    .map((_, i) => i)
    .filter(
      (i) =>
        (values[i] as number) > 0 && (wanted[i] as number) > 0 && (cutting.items[i]?.size ?? 0) <= capacity,
    )
    .sort((a, b) => density(b) - density(a) || a - b);
}

function apartDensity(cutting: Cutting, values: ArrayLike<number>, i: number): number {
  const item = cutting.items[i];
  const apart = item ? item.size - Math.abs(item.left - item.right) : 0;
  return apart > 0 ? (values[i] as number) / apart : Infinity;
}

/** From each place on, the least or the most of all that follow. */
function fromEnd(values: number[], pick: (a: number, b: number) => number, last: number): number[] {
  const result = [...values, last];
  for (let k = values.length - 1; k >= 0; k--) result[k] = pick(result[k] as number, result[k + 1] as number);
  return result;
}

function byItem(cutting: Cutting, order: readonly number[], counts: Int32Array): Int32Array {
  const all = new Int32Array(cutting.items.length);
  order.forEach((item, k) => {
    all[item] = counts[k] as number;
  });
  return all;
}
