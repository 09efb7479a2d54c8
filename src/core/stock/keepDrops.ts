import type { Cutting, Packing, Pattern } from './cutting.js';
import { stockOf } from './cutting.js';
import { knapsack } from './knapsack.js';
import { patternKey, patternOf, takenBy } from './patterns.js';

/** Counts that end the search. */
const mostPairs = 6000;
const nodesAPair = 400;

/** How long the rest of a bar is that leaves so much of the capacity of a stock, in units; 0 where nothing is left. */
export type RestOf = (room: number, stock: number) => { rest: number; isKept: boolean };

/** How good the rests of two bars are: the more kept, the fewer drops, the more unlike. */
interface Merit {
  kept: number;
  drops: number;
  squares: number;
}

/**
 * A plan of the same bars with more length in drops worth keeping, or with as much in fewer of them.
 *
 * Two bars at a time: one is filled anew, as full as can be from the pieces of both, and the other takes what is left.
 * That is kept where it is better, until no two bars are, or the count of pairs is used up. So it is a search: it never
 * makes a plan worse and never changes what is bought, and it does not prove that no other plan keeps more.
 * @param cutting items and stocks
 * @param packing the plan
 * @param restOf what room on a bar comes to
 * @returns the plan with the same bars and the same pieces
 * Valid for every plan. Throws nothing.
 * @example keepDrops(cutting, packing, restOf).runs
 * Source: own; a local search by pairs.
 */
export function keepDrops(cutting: Cutting, packing: Packing, restOf: RestOf): Packing {
  const bars = new Bars(packing);
  let pairs = 0;
  for (let isBetter = true; isBetter; ) {
    isBetter = false;
    for (const [one, other] of bars.pairs(cutting)) {
      if (!bars.has(one, other)) continue;
      if (++pairs > mostPairs) return bars.packing(packing.short);
      const better = refilled(cutting, one, other, restOf);
      if (!better) continue;
      bars.exchange([one, other], better);
      isBetter = true;
    }
  }
  return bars.packing(packing.short);
}

/** Bars cut alike, by what is cut from them. */
class Bars {
  private readonly runs = new Map<string, { pattern: Pattern; bars: number }>();

  constructor({ runs }: Packing) {
    for (const { pattern, bars } of runs) this.add(pattern, bars);
  }

  private add(pattern: Pattern, bars: number): void {
    const key = patternKey(pattern);
    const left = (this.runs.get(key)?.bars ?? 0) + bars;
    if (left > 0) this.runs.set(key, { pattern, bars: left });
    else this.runs.delete(key);
  }

  /** The ones with the most room first: each with every other that is not full, also with one cut alike. */
  pairs(cutting: Cutting): [Pattern, Pattern][] {
    const all = [...this.runs.values()]
      .map(({ pattern }) => ({ pattern, room: roomOf(cutting, pattern) }))
      .filter(({ room }) => room > 0)
      .sort((a, b) => b.room - a.room);
    return all.flatMap(({ pattern }, at) =>
      all.slice(at).map((other): [Pattern, Pattern] => [pattern, other.pattern]),
    );
  }

  has(one: Pattern, other: Pattern): boolean {
    const count = (pattern: Pattern) => this.runs.get(patternKey(pattern))?.bars ?? 0;
    return one === other ? count(one) > 1 : count(one) > 0 && count(other) > 0;
  }

  exchange(gone: readonly Pattern[], come: readonly Pattern[]): void {
    for (const pattern of gone) this.add(pattern, -1);
    for (const pattern of come) this.add(pattern, 1);
  }

  packing(short: readonly number[]): Packing {
    return { runs: [...this.runs.values()], short };
  }
}

function roomOf(cutting: Cutting, pattern: Pattern): number {
  return stockOf(cutting, pattern).capacity - takenBy(cutting, pattern.items, pattern.counts);
}

/** The two bars anew, where that is better; the one or the other is filled. */
function refilled(
  cutting: Cutting,
  one: Pattern,
  other: Pattern,
  restOf: RestOf,
): [Pattern, Pattern] | undefined {
  const pieces = new Int32Array(cutting.items.length);
  for (const { items, counts } of [one, other])
    items.forEach((item, k) => {
      pieces[item] = (pieces[item] as number) + (counts[k] as number);
    });
  let best: [Pattern, Pattern] | undefined;
  let merit = meritOf(cutting, [one, other], restOf);
  const sizes = cutting.items.map((item) => item.size);
  for (const [full, rest] of [
    [other, one],
    [one, other],
  ] as const) {
    const { capacity } = stockOf(cutting, full);
    const fill = knapsack(cutting, sizes, pieces, capacity, 0, nodesAPair).found.at(-1);
    if (!fill) continue;
    const left = pieces.map((count, item) => count - (fill.counts[item] as number));
    const two: [Pattern, Pattern] = [patternOf(full.stock, fill.counts), patternOf(rest.stock, left)];
    // A bar without pieces would not be bought: that is another purchase.
    if (two[1].items.length === 0 || roomOf(cutting, two[1]) < 0) continue;
    const next = meritOf(cutting, two, restOf);
    if (!isMore(next, merit)) continue;
    best = two;
    merit = next;
  }
  return best;
}

function meritOf(cutting: Cutting, patterns: readonly Pattern[], restOf: RestOf): Merit {
  const merit = { kept: 0, drops: 0, squares: 0 };
  for (const pattern of patterns) {
    const { rest, isKept } = restOf(roomOf(cutting, pattern), pattern.stock);
    merit.squares += rest ** 2;
    if (!isKept) continue;
    merit.kept += rest;
    merit.drops++;
  }
  return merit;
}

function isMore(one: Merit, other: Merit): boolean {
  const kept = one.kept - other.kept;
  if (Math.abs(kept) > 1e-6) return kept > 0;
  if (one.drops !== other.drops) return one.drops < other.drops;
  return one.squares > other.squares * (1 + 1e-9);
}
