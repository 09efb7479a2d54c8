import { costOf, stockOf, type Cutting, type Packing, type Pattern, type PatternRun } from './cutting.js';
import { everything, fitDecreasing } from './fitDecreasing.js';
import { generateColumns } from './generateColumns.js';
import { belowOf, type Incumbent } from './incumbent.js';
import type { Master } from './master.js';
import { tidy } from './patterns.js';
import { correctValues } from './valueCorrection.js';
import { fitWork, type Work } from './work.js';

/** How a dive rounds: what counts as near to one more bar, and how much chance is mixed in. */
interface Manner {
  nearlyWhole: number;
  chance: number;
}

interface DiveLimits {
  /** The most. */
  dives: number;
  /** What they may spend; the first three are always made. */
  work: number;
  /** What a plan must cost less than to be of use; with the first such plan they end. */
  below: number;
}

interface DiveSearch {
  cutting: Cutting;
  master: Master;
  best: Incumbent;
  below: number;
  /** What a plan must stay below to be better. */
  goal: () => number;
  work: Work;
}

const roundsADepth = 60;
/** Pieces left, from which on values are corrected too. */
const mostCorrected = 250;
const roundsOfCorrection = 6;

/**
 * Dives for whole plans: solves the linear program for what is left, cuts the whole bars of its answer and the largest
 * of the parts of bars, and so on until nothing is left or no better plan can come; what is left is also filled by
 * first-fit and best-fit each time.
 *
 * @param cutting items and stocks
 * @param master the program; its rows are left as they were
 * @param best told of every better plan
 * @param limits of dives
 * @param work counted
 * @returns nothing
 * Valid for every cutting. Throws nothing.
 * @example dive(cutting, master, best, { dives: 40, work: 1e6, below: Infinity }, work)
 * Source: diving with column generation, common practice.
 */
export function dive(
  cutting: Cutting,
  master: Master,
  best: Incumbent,
  limits: DiveLimits,
  work: Work,
): void {
  const end = work.spent + limits.work;
  const random = randomFrom(12345);
  const { below } = limits;
  const goal = () => Math.min(below, belowOf(cutting, best));
  const search = { cutting, master, best, below, goal, work };
  for (let at = 0; at < limits.dives && !isFound(search) && !work.isOver(); at++) {
    if (at >= 3 && work.spent > end) break;
    diveOnce(search, mannerOf(at), random);
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

function diveOnce(search: DiveSearch, manner: Manner, random: () => number): void {
  const { cutting, master, goal, work } = search;
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
    offerFilled(search, runs, { pieces, bars });
    if (pieces.every((count) => count === 0) || isFound(search) || work.isOver()) return;
    master.setWanted({ pieces, bars });
    const left = goal() - costOf(cutting, { runs, short: [] });
    const rounds = runs.length === 0 ? Infinity : roundsADepth;
    const answer = generateColumns(
      cutting,
      master,
      { pieces, bars },
      { bound: left, rounds, isExact: false },
      work,
    );
    if (!answer || answer.bound >= left) return;
    if (!cutSome(master, answer.patterns, manner, random, cut, pieces)) return;
  }
}

function isFound({ cutting, best, below }: DiveSearch): boolean {
  return best.isDone() || (Number.isFinite(below) && belowOf(cutting, best) < below);
}

/** What is left is filled by quick rules. */
function offerFilled(
  { cutting, best, goal, work }: DiveSearch,
  runs: readonly PatternRun[],
  rest: { pieces: number[]; bars: number[] },
): void {
  const offer = (filled: Packing) => {
    const packing = { runs: [...runs, ...filled.runs], short: filled.short };
    // Plans that cost as much may still get cheaper when bars are exchanged.
    if (costOf(cutting, packing) <= goal() + mostSaved(cutting, packing.runs))
      best.offer(tidy(cutting, packing));
  };
  for (const rule of ['first', 'best'] as const) {
    const filled = fitDecreasing(cutting, rule, rest);
    work.add(cutting.items.length * filled.runs.length * fitWork);
    offer(filled);
  }
  const count = rest.pieces.reduce((sum, each) => sum + each, 0);
  if (runs.length === 0 || count === 0 || count > mostCorrected || best.isDone()) return;
  correctValues(
    cutting,
    roundsOfCorrection,
    (filled) => {
      offer(filled);
      return best.isDone();
    },
    work,
    rest,
  );
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
