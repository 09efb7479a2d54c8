import { costOf, stockOf, type Cutting, type Pattern, type PatternRun } from './cutting.js';
import { everything, fitDecreasing } from './fitDecreasing.js';
import { generateColumns } from './generateColumns.js';
import type { Incumbent } from './incumbent.js';
import type { Master } from './master.js';
import { tidy } from './patterns.js';
import type { Work } from './work.js';

/** How a dive rounds: what counts as near to one more bar, and how much chance is mixed in. */
interface Manner {
  nearlyWhole: number;
  chance: number;
}

const roundsADepth = 60;

/**
 * Dives for whole plans: solves the linear program for what is left, cuts the whole bars of its answer and the largest
 * of the parts of bars, and so on until nothing is left or no better plan can come; what is left is also filled by
 * first-fit and best-fit each time.
 *
 * @param cutting items and stocks
 * @param master the program; its rows are left as they were
 * @param best told of every better plan
 * @param dives the most
 * @param mostWork where diving ends; the first three dives are always made
 * @param work counted
 * @returns nothing
 * Valid for every cutting. Throws nothing.
 * @example dive(cutting, master, best, 40, 1e6, work)
 * Source: diving with column generation, common practice.
 */
export function dive(
  cutting: Cutting,
  master: Master,
  best: Incumbent,
  dives: number,
  mostWork: number,
  work: Work,
): void {
  const end = work.spent + mostWork;
  const random = randomFrom(12345);
  for (let at = 0; at < dives && !best.isDone() && !work.isOver(); at++) {
    if (at >= 3 && work.spent > end) break;
    diveOnce(cutting, master, best, mannerOf(at), random, work);
  }
  master.setWanted(everything(cutting));
}

function mannerOf(at: number): Manner {
  const first = [0.999, 0.7, 0.5][at];
  if (first !== undefined) return { nearlyWhole: first, chance: 0 };
  return {
    nearlyWhole: [0.999, 0.9, 0.8][at % 3] ?? 1,
    chance: [0.15, 0.3, 0.6][Math.floor(at / 3) % 3] ?? 0,
  };
}

function diveOnce(
  cutting: Cutting,
  master: Master,
  best: Incumbent,
  manner: Manner,
  random: () => number,
  work: Work,
): void {
  const start = everything(cutting);
  const pieces = Array.from(start.pieces);
  const bars = Array.from(start.bars);
  const runs: PatternRun[] = [];
  const cut = (pattern: Pattern): boolean => {
    if (!((bars[pattern.stock] as number) > 0) || !pattern.items.some((item) => (pieces[item] as number) > 0))
      return false;
    bars[pattern.stock] = (bars[pattern.stock] as number) - 1;
    pattern.items.forEach((item, k) => {
      pieces[item] = Math.max(0, (pieces[item] as number) - (pattern.counts[k] as number));
    });
    runs.push({ pattern, bars: 1 });
    return true;
  };
  for (;;) {
    offerFilled(cutting, best, runs, { pieces, bars });
    if (pieces.every((count) => count === 0) || best.isDone() || work.isOver()) return;
    master.setWanted({ pieces, bars });
    const spent = costOf(cutting, { runs, short: [] });
    const goal = goalOf(cutting, best) - spent;
    const rounds = runs.length === 0 ? Infinity : roundsADepth;
    const answer = generateColumns(
      cutting,
      master,
      { pieces, bars },
      { bound: goal, rounds, isExact: false },
      work,
    );
    if (!answer || answer.bound >= goal) return;
    if (!cutSome(master, answer.patterns, manner, random, cut, pieces)) return;
  }
}

/** What a plan must stay below to be better. */
function goalOf(cutting: Cutting, best: Incumbent): number {
  const packing = best.packing;
  return packing && packing.short.every((count) => count === 0) ? costOf(cutting, packing) : Infinity;
}

function offerFilled(
  cutting: Cutting,
  best: Incumbent,
  runs: readonly PatternRun[],
  rest: { pieces: number[]; bars: number[] },
): void {
  const goal = goalOf(cutting, best);
  for (const rule of ['first', 'best'] as const) {
    const filled = fitDecreasing(cutting, rule, rest);
    const packing = { runs: [...runs, ...filled.runs], short: filled.short };
    // Plans that cost as much may still get cheaper when bars are exchanged.
    if (costOf(cutting, packing) <= goal + mostSaved(cutting, packing.runs))
      best.offer(tidy(cutting, packing));
  }
}

function mostSaved(cutting: Cutting, runs: readonly PatternRun[]): number {
  const cheapest = Math.min(...cutting.stocks.map((stock) => stock.cost));
  return runs.some(({ pattern }) => stockOf(cutting, pattern).cost > cheapest) ? Infinity : 0;
}

/** Cuts the whole bars of an answer, or where there are none those that are most nearly whole. */
function cutSome(
  master: Master,
  times: ArrayLike<number>,
  { nearlyWhole, chance }: Manner,
  random: () => number,
  cut: (pattern: Pattern) => boolean,
  pieces: readonly number[],
): boolean {
  let isCut = false;
  const parts: { pattern: Pattern; part: number; rank: number }[] = [];
  for (let at = 0; at < times.length; at++) {
    const pattern = master.patterns[at] as Pattern;
    const part = times[at] as number;
    for (let whole = Math.floor(part + 1e-6); whole > 0 && cut(pattern); whole--) isCut = true;
    if (part > 1e-6) parts.push({ pattern, part, rank: part + (chance > 0 ? chance * random() : 0) });
  }
  if (isCut) return true;
  parts.sort((a, b) => b.rank - a.rank || b.pattern.counts.length - a.pattern.counts.length);
  for (const { pattern, part } of parts) {
    const isWanted = pattern.items.every(
      (item, k) => (pieces[item] as number) >= (pattern.counts[k] as number),
    );
    if (isCut && (part < nearlyWhole || !isWanted)) break;
    if (cut(pattern)) isCut = true;
    else if (isCut) break;
  }
  return isCut;
}

/** Numbers from 0 to 1, always the same. */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
