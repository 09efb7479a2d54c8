import type { Cutting, Packing } from './cutting.js';
import { takenBy, tidy } from './patterns.js';

/** What is still to be planned: pieces of each item, bars of each stock. */
export interface Wanted {
  pieces: ArrayLike<number>;
  bars: ArrayLike<number>;
}

interface OpenBar {
  stock: number;
  capacity: number;
  counts: number[];
  items: number[];
  taken: number;
}

/**
 * A plan by first-fit or best-fit decreasing: the largest pieces first, each into the first bar with room, or into the
 * one with the least room that is enough; a new bar is of the length that costs the least by its capacity.
 *
 * @param cutting items by falling size
 * @param rule which of the two
 * @param wanted what is to be planned; without it, everything
 * @returns a plan; `short` where the bars do not suffice
 * Valid for every cutting. Throws nothing.
 * @example fitDecreasing(cutting, 'best').runs
 * Source: first-fit and best-fit decreasing, Johnson 1973, from memory.
 */
export function fitDecreasing(
  cutting: Cutting,
  rule: 'first' | 'best',
  wanted = everything(cutting),
): Packing {
  const open: OpenBar[] = [];
  const bars = Array.from(wanted.bars);
  const rest = Array.from(wanted.pieces);
  for (let i = 0; i < rest.length; i++) {
    // The tightest bar stays the tightest while it takes more of the same.
    const order = rule === 'best' ? tightestFirst(cutting, open, i) : open;
    for (const bar of order) if ((rest[i] as number) > 0) fill(cutting, bar, i, rest);
    while ((rest[i] as number) > 0) {
      const bar = openBar(cutting, i, bars);
      if (!bar) break;
      fill(cutting, bar, i, rest);
      open.push(bar);
    }
  }
  const runs = open.map(({ stock, items, counts }) => ({ pattern: { stock, items, counts }, bars: 1 }));
  return { runs, short: rest };
}

/** The better of both, of everything, without waste. */
export function bestFit(cutting: Cutting): Packing[] {
  return (['first', 'best'] as const).map((rule) => tidy(cutting, fitDecreasing(cutting, rule)));
}

export function everything(cutting: Cutting): Wanted {
  return {
    pieces: cutting.items.map((item) => item.demand),
    bars: cutting.stocks.map((stock) => stock.available),
  };
}

/** Of those with room; what miters lose may be less with one more, so that with them all are tried. */
function tightestFirst(cutting: Cutting, open: readonly OpenBar[], item: number): OpenBar[] {
  const size = cutting.isSquare ? (cutting.items[item]?.size ?? 0) : 0;
  return open.filter((bar) => room(bar) >= size).sort((a, b) => room(a) - room(b));
}

function room(bar: OpenBar): number {
  return bar.capacity - bar.taken;
}

/** Puts as many of an item into a bar as fit. */
function fill(cutting: Cutting, bar: OpenBar, item: number, rest: number[]): void {
  const size = cutting.items[item]?.size ?? 0;
  // Without what miters lose, so never too few: a piece that joins others may lose less, but takes no less than the way.
  const items = [...bar.items, item];
  let count = Math.min(rest[item] as number, mostOf(cutting, bar, size));
  while (count > 0 && takenBy(cutting, items, [...bar.counts, count]) > bar.capacity) count--;
  if (count === 0) return;
  bar.items = items;
  bar.counts = [...bar.counts, count];
  bar.taken = takenBy(cutting, bar.items, bar.counts);
  rest[item] = (rest[item] as number) - count;
}

function mostOf(cutting: Cutting, bar: OpenBar, size: number): number {
  if (cutting.isSquare) return Math.floor(room(bar) / size);
  const filled = bar.items.reduce(
    (sum, each, k) => sum + (cutting.items[each]?.size ?? 0) * (bar.counts[k] as number),
    0,
  );
  return Math.floor((bar.capacity - filled) / size);
}

function openBar(cutting: Cutting, item: number, bars: number[]): OpenBar | undefined {
  const alone = takenBy(cutting, [item], [1]);
  let best: number | undefined;
  cutting.stocks.forEach(({ capacity, cost }, at) => {
    if ((bars[at] as number) <= 0 || capacity < alone) return;
    const other = best === undefined ? undefined : cutting.stocks[best];
    if (!other || cost * other.capacity < other.cost * capacity) best = at;
  });
  const stock = best === undefined ? undefined : cutting.stocks[best];
  if (best === undefined || !stock) return undefined;
  bars[best] = (bars[best] as number) - 1;
  return { stock: best, capacity: stock.capacity, counts: [], items: [], taken: 0 };
}
