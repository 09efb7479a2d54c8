import type { Cutting, Pattern } from './cutting.js';
import { takenBy } from './patterns.js';
import { nodeWork, type Work } from './work.js';

/**
 * Every pattern of a stock that is worth at least so much, and to which no piece can be added: whoever wants one that
 * is less full may cut a full one.
 *
 * @param cutting items and stocks
 * @param values of pieces, at least 0
 * @param stock by place
 * @param least value
 * @param mostPatterns where it gives up
 * @param mostNodes where it gives up
 * @param work counted
 * @returns the patterns; undefined where it gave up
 * Valid for every cutting. Throws nothing.
 * @example everyPattern(cutting, values, 0, 0, 1000, 1e6, work)?.length
 * Source: none; depth-first search.
 */
export function everyPattern(
  cutting: Cutting,
  values: ArrayLike<number>,
  stock: number,
  least: number,
  mostPatterns: number,
  mostNodes: number,
  work: Work,
): Pattern[] | undefined {
  const capacity = cutting.stocks[stock]?.capacity ?? 0;
  const order = cutting.items.map((_, i) => i).filter((i) => (cutting.items[i]?.size ?? 0) <= capacity);
  const sizes = order.map((i) => cutting.items[i]?.size ?? 1);
  const density = (k: number) => (values[order[k] as number] as number) / (sizes[k] as number);
  const rank = order.map((_, k) => k).sort((a, b) => density(b) - density(a) || a - b);
  const items = rank.map((k) => order[k] as number);
  const search: PatternSearch = { cutting, stock, capacity, items, counts: new Int32Array(items.length) };
  const found: Pattern[] = [];
  let nodes = 0;
  const visit = (at: number, room: number, value: number): boolean => {
    if (++nodes > mostNodes) return false;
    const item = items[at];
    if (item === undefined) {
      const isEmpty = room === capacity;
      if (isEmpty || value < least || !isFull(search, room)) return true;
      if (found.length === mostPatterns) return false;
      found.push(patternAt(search));
      return true;
    }
    const size = cutting.items[item]?.size ?? 1;
    if (value + ((room * (values[item] as number)) / size) * (1 + 1e-12) < least) return true;
    const most = Math.min(cutting.items[item]?.demand ?? 0, Math.floor(room / size));
    for (let count = most; count >= 0; count--) {
      search.counts[at] = count;
      if (!visit(at + 1, room - count * size, value + count * (values[item] as number))) return false;
    }
    return true;
  };
  const isComplete = visit(0, capacity, 0);
  work.add(nodes * nodeWork(cutting));
  return isComplete ? found : undefined;
}

interface PatternSearch {
  cutting: Cutting;
  stock: number;
  capacity: number;
  items: readonly number[];
  counts: Int32Array;
}

/** Whether what is in the bar fits, and nothing more does. */
function isFull({ cutting, capacity, items, counts }: PatternSearch, room: number): boolean {
  if (!cutting.isSquare && takenBy(cutting, items, counts) > capacity) return false;
  return items.every((item, k) => {
    const { demand = 0, size = 0 } = cutting.items[item] ?? {};
    if ((counts[k] as number) >= demand || size > room) return true;
    if (cutting.isSquare) return false;
    const more = counts.slice();
    more[k] = (more[k] as number) + 1;
    return takenBy(cutting, items, more) > capacity;
  });
}

function patternAt({ stock, items, counts }: PatternSearch): Pattern {
  const used = items
    .map((item, k) => ({ item, count: counts[k] as number }))
    .filter(({ count }) => count > 0);
  used.sort((a, b) => a.item - b.item);
  return { stock, items: used.map(({ item }) => item), counts: used.map(({ count }) => count) };
}
