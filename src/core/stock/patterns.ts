import { stockOf, type Cutting, type Packing, type Pattern } from './cutting.js';
import { miterLoss } from './miterLoss.js';

/** What the pieces of a bar take, with what their miters lose. */
export function takenBy(cutting: Cutting, items: ArrayLike<number>, counts: ArrayLike<number>): number {
  let taken = miterLoss(cutting, items, counts);
  for (let k = 0; k < items.length; k++)
    taken += (cutting.items[items[k] as number]?.size ?? 0) * (counts[k] as number);
  return taken;
}

/** The pattern of counts by item. */
export function patternOf(stock: number, countByItem: ArrayLike<number>): Pattern {
  const items: number[] = [];
  const counts: number[] = [];
  for (let i = 0; i < countByItem.length; i++) {
    if ((countByItem[i] as number) === 0) continue;
    items.push(i);
    counts.push(countByItem[i] as number);
  }
  return { stock, items, counts };
}

export function patternKey({ stock, items, counts }: Pattern): string {
  return `${String(stock)}:${items.join()}:${counts.join()}`;
}

/** The most bars that are cut alike from what is still wanted and to be had. */
export function repeatsOf(pattern: Pattern, wanted: ArrayLike<number>, available: number): number {
  return pattern.items.reduce(
    (most, item, k) => Math.min(most, Math.floor((wanted[item] as number) / (pattern.counts[k] as number))),
    available,
  );
}

/**
 * The plan without the pieces that are cut more often than wanted: taking a piece out of a bar never makes the others
 * need more, since what it took covers the way between its faces. Each bar is then bought in the cheapest length that
 * holds what is left in it.
 */
export function tidy(cutting: Cutting, packing: Packing): Packing {
  const left = cutting.stocks.map((stock) => stock.available);
  for (const { pattern, bars } of packing.runs) left[pattern.stock] = (left[pattern.stock] as number) - bars;
  const spare = cutting.items.map((item) => -item.demand);
  for (const { pattern, bars } of packing.runs)
    pattern.items.forEach((item, k) => {
      spare[item] = (spare[item] as number) + bars * (pattern.counts[k] as number);
    });
  const short = spare.map((count) => Math.max(0, -count));
  const bars = packing.runs.flatMap((run) => withoutSpare(run.pattern, run.bars, spare));
  const byCost = cutting.stocks.map((_, at) => at);
  byCost.sort((a, b) => (cutting.stocks[a]?.cost ?? 0) - (cutting.stocks[b]?.cost ?? 0) || a - b);
  const runs = new Map<string, { pattern: Pattern; bars: number }>();
  for (const each of bars) {
    if (each.pattern.items.length === 0) {
      left[each.pattern.stock] = (left[each.pattern.stock] as number) + each.bars;
      continue;
    }
    for (const run of inCheaperStock(cutting, each, byCost, left)) {
      const key = patternKey(run.pattern);
      const same = runs.get(key);
      runs.set(key, { pattern: run.pattern, bars: run.bars + (same?.bars ?? 0) });
    }
  }
  return { runs: [...runs.values()], short };
}

/** The run less the pieces that are spare, which are taken from its last bars. */
function withoutSpare(pattern: Pattern, bars: number, spare: number[]): { pattern: Pattern; bars: number }[] {
  const isTouched = pattern.items.some((item) => (spare[item] as number) > 0);
  if (!isTouched || bars === 0) return bars === 0 ? [] : [{ pattern, bars }];
  const counts = pattern.items.map((item, k) => {
    const gone = Math.min(pattern.counts[k] as number, Math.max(0, spare[item] as number));
    spare[item] = (spare[item] as number) - gone;
    return (pattern.counts[k] as number) - gone;
  });
  const kept = pattern.items.flatMap((item, k) =>
    (counts[k] as number) > 0 ? [{ item, count: counts[k] as number }] : [],
  );
  const last = { stock: pattern.stock, items: kept.map((k) => k.item), counts: kept.map((k) => k.count) };
  return [...withoutSpare(pattern, bars - 1, spare), { pattern: last, bars: 1 }];
}

function inCheaperStock(
  cutting: Cutting,
  { pattern, bars }: { pattern: Pattern; bars: number },
  byCost: readonly number[],
  left: number[],
): { pattern: Pattern; bars: number }[] {
  const { cost } = stockOf(cutting, pattern);
  const runs: { pattern: Pattern; bars: number }[] = [];
  let taken: number | undefined;
  let rest = bars;
  for (const at of byCost) {
    const stock = cutting.stocks[at];
    if (!stock || stock.cost >= cost || rest === 0) break;
    const moved = Math.min(rest, left[at] as number);
    if (moved <= 0) continue;
    taken ??= takenBy(cutting, pattern.items, pattern.counts);
    if (stock.capacity < taken) continue;
    left[at] = (left[at] as number) - moved;
    left[pattern.stock] = (left[pattern.stock] as number) + moved;
    rest -= moved;
    runs.push({ pattern: { ...pattern, stock: at }, bars: moved });
  }
  return rest > 0 ? [...runs, { pattern, bars: rest }] : runs;
}
