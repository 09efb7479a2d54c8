import type { Cutting, Packing, Pattern, PatternRun } from './cutting.js';
import { everything, type Wanted } from './fitDecreasing.js';
import { knapsack } from './knapsack.js';
import { patternOf, repeatsOf, takenBy } from './patterns.js';
import { nodeWork, type Work } from './work.js';

/** What the largest bar is worth when it is full. */
const scale = 2 ** 24;
const nodesABar = 3000;

/**
 * Plans by sequential value correction: bar after bar takes the pieces of most value, in the stock that gives the most
 * value for its price; pieces that ended up in wasteful bars are worth more in the next round.
 *
 * A piece starts worth its size. After a round each is worth 3/4 of what it was and 1/4 of its share of the bars it
 * came out of, which is the greater the more they waste.
 * @param cutting items and stocks
 * @param rounds how often
 * @param onPacking called with the plan of each round; true ends the search
 * @param work counted
 * @param wanted what is to be planned; without it, everything
 * @returns nothing: plans are handed to `onPacking`
 * Valid for every cutting. Throws nothing.
 * @example correctValues(cutting, 30, (packing) => keep(packing), work)
 * Source: sequential value correction after Mukhacheva and Zalgaller 1993, from memory.
 */
export function correctValues(
  cutting: Cutting,
  rounds: number,
  onPacking: (packing: Packing) => boolean,
  work: Work,
  wanted = everything(cutting),
): void {
  const largest = Math.max(...cutting.stocks.map((stock) => stock.capacity));
  const values = cutting.items.map((item) => (item.size / largest) * scale);
  for (let round = 0; round < rounds; round++) {
    const next = [...values];
    const onPattern = (pattern: Pattern) => correct(cutting, pattern, largest, next);
    const packing = packByValue(cutting, values, wanted, work, onPattern);
    if (onPacking(packing)) return;
    next.forEach((value, i) => {
      values[i] = value;
    });
  }
}

function packByValue(
  cutting: Cutting,
  values: readonly number[],
  wanted: Wanted,
  work: Work,
  onPattern: (pattern: Pattern) => void,
): Packing {
  const pieces = Array.from(wanted.pieces);
  const bars = Array.from(wanted.bars);
  const runs: PatternRun[] = [];
  for (;;) {
    const pattern = bestBar(cutting, values, { pieces, bars }, work);
    if (!pattern) return { runs, short: pieces };
    const repeats = repeatsOf(pattern, pieces, bars[pattern.stock] as number);
    pattern.items.forEach((item, k) => {
      pieces[item] = (pieces[item] as number) - repeats * (pattern.counts[k] as number);
    });
    bars[pattern.stock] = (bars[pattern.stock] as number) - repeats;
    runs.push({ pattern, bars: repeats });
    onPattern(pattern);
  }
}

/** The pattern of most value for its price. */
function bestBar(
  cutting: Cutting,
  values: readonly number[],
  { pieces, bars }: Wanted,
  work: Work,
): Pattern | undefined {
  const whole = values.map(Math.round);
  let best: { pattern: Pattern; value: number; cost: number } | undefined;
  cutting.stocks.forEach(({ capacity, cost }, at) => {
    if ((bars[at] as number) <= 0) return;
    const { found, nodes } = knapsack(cutting, whole, pieces, capacity, 0, nodesABar);
    work.add((nodes + cutting.items.length) * nodeWork(cutting));
    const fill = found.at(-1);
    if (fill && (!best || fill.value * best.cost > best.value * cost))
      best = { pattern: patternOf(at, fill.counts), value: fill.value, cost };
  });
  return best?.pattern;
}

function correct(cutting: Cutting, pattern: Pattern, largest: number, values: number[]): void {
  const capacity = cutting.stocks[pattern.stock]?.capacity ?? 0;
  const waste = (capacity - takenBy(cutting, pattern.items, pattern.counts)) / capacity;
  for (const item of pattern.items) {
    const share = ((cutting.items[item]?.size ?? 0) / largest) * scale;
    values[item] = 0.75 * (values[item] as number) + 0.25 * (share / (1 - waste)) * (1 + waste / 2);
  }
}
