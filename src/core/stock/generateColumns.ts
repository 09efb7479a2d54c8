import type { Cutting } from './cutting.js';
import type { Wanted } from './fitDecreasing.js';
import { dearestOf, type Master } from './master.js';
import { price, type Priced, type Prices } from './pricing.js';
import type { Work } from './work.js';

/** Prices that no pattern beats, and what they prove. */
export interface Dual extends Prices {
  /** No plan costs less; in steps of cost, not rounded. */
  bound: number;
}

export interface Generated {
  /** How often each pattern of the master is cut. */
  patterns: ArrayLike<number>;
  dual: Dual | undefined;
  /** The best bound, in whole steps. */
  bound: number;
  /** Whether pieces are left out of the last answer. */
  isShort: boolean;
}

export interface Until {
  /** A bound of so much is enough. */
  bound: number;
  rounds: number;
  /** Goes on until no pattern is better, also where the bound cannot rise by a whole step. */
  isExact: boolean;
  /** Whether it is enough that parts of bars hold all pieces. */
  isAnyPlan?: boolean;
}

/** How much of the best prices so far goes into the next: it keeps prices from swinging. */
const smoothing = 0.4;
const scaleBits = 30;

/**
 * Column generation: solves the linear program, asks for patterns that beat its prices, adds them, and so on, with a
 * bound from the prices of every round.
 *
 * @param cutting items and stocks
 * @param master the program; its rows are those of `wanted`
 * @param wanted pieces and bars
 * @param until when to end
 * @param work counted
 * @returns the last answer and the best bound; undefined where the solver found no optimum
 * Valid for every cutting. Throws nothing.
 * @example generateColumns(cutting, master, everything(cutting), until, work)?.bound
 * Source: Gilmore and Gomory 1961 and 1963; smoothing after Wentges 1997, from memory.
 */
export function generateColumns(
  cutting: Cutting,
  master: Master,
  wanted: Wanted,
  until: Until,
  work: Work,
): Generated | undefined {
  const scale = 2 ** (scaleBits - Math.ceil(Math.log2(dearestOf(cutting))));
  let best: Dual | undefined;
  let mixed: Prices | undefined;
  const tryPrices = (prices: Prices) => {
    const priced = price(cutting, prices, wanted.pieces, wanted.bars, work);
    const dual = dualOf(cutting, prices, priced, wanted, master.limited);
    if (!best || dual.bound > best.bound) {
      best = dual;
      mixed = prices;
    }
    return master.add(priced.patterns);
  };
  for (let round = 1; ; round++) {
    const answer = master.solve();
    if (!answer) return undefined;
    if (until.isAnyPlan === true && !answer.isShort)
      return { ...answer, dual: best, bound: wholeBound(best?.bound ?? 0) };
    const prices = wholePrices(cutting, master.limited, answer.prices, scale);
    const smooth = mixed && mix(prices, mixed);
    let added = tryPrices(smooth ?? prices);
    if (added === 0 && smooth) added = tryPrices(prices);
    const result = { ...answer, dual: best, bound: wholeBound(best?.bound ?? 0) };
    if (added === 0 || result.bound >= until.bound || round >= until.rounds || work.isOver()) return result;
    if (!until.isExact && result.bound >= wholeBound(objectiveOf(answer, wanted, master.limited)))
      return result;
  }
}

/** A bound in whole steps; a little less is rounded, so that it never rises over one by rounding. */
export function wholeBound(bound: number): number {
  return Math.max(0, Math.ceil(bound * (1 - 1e-13) - 1e-9));
}

/** What the program costs, by its prices. */
function objectiveOf(
  answer: { prices: ArrayLike<number> },
  wanted: Wanted,
  limited: readonly number[],
): number {
  const items = wanted.pieces.length;
  let objective = 0;
  for (let i = 0; i < items; i++) objective += (answer.prices[i] as number) * (wanted.pieces[i] as number);
  limited.forEach((stock, row) => {
    const bars = wanted.bars[stock] as number;
    if (Number.isFinite(bars)) objective += (answer.prices[items + row] as number) * bars;
  });
  return objective - 1e-7;
}

function wholePrices(
  cutting: Cutting,
  limited: readonly number[],
  prices: ArrayLike<number>,
  scale: number,
): Prices {
  const items = cutting.items.length;
  const bars = new Float64Array(cutting.stocks.length);
  limited.forEach((stock, row) => {
    bars[stock] = Math.ceil(Math.min(0, prices[items + row] as number) * scale) + 0;
  });
  const pieces = Float64Array.from({ length: items }, (_, i) =>
    Math.floor(Math.max(0, prices[i] as number) * scale),
  );
  return { pieces, bars, scale };
}

function mix(prices: Prices, best: Prices): Prices {
  const between = (one: number, other: number) => (1 - smoothing) * one + smoothing * other;
  return {
    pieces: prices.pieces.map((each, i) => Math.floor(between(each, best.pieces[i] as number))),
    bars: prices.bars.map((each, i) => Math.ceil(between(each, best.bars[i] as number))),
    scale: prices.scale,
  };
}

/**
 * Makes prices such that no pattern is worth more than its bar, and says what they prove.
 *
 * Where bars are not limited, all prices are divided by the most that a pattern is worth for one step of its cost
 * (Farley 1990, from memory); where they are, the price of the bar is lowered by what the best pattern is worth too
 * much. Then Σ price · pieces + Σ price · bars bounds every plan, by the duality of linear programs.
 */
function dualOf(
  cutting: Cutting,
  prices: Prices,
  priced: Priced,
  wanted: Wanted,
  limited: readonly number[],
): Dual {
  const isLimited = new Set(limited);
  let over = 1;
  cutting.stocks.forEach(({ cost }, at) => {
    if (isLimited.has(at) || !((wanted.bars[at] as number) > 0)) return;
    over = Math.max(over, (priced.most[at] as number) / (cost * prices.scale));
  });
  const scale = prices.scale * over;
  const bars = new Float64Array(cutting.stocks.length);
  let total = 0;
  let pieces = 0;
  for (let i = 0; i < prices.pieces.length; i++) {
    total += (prices.pieces[i] as number) * (wanted.pieces[i] as number);
    pieces += wanted.pieces[i] as number;
  }
  for (const stock of limited) {
    const count = Math.min(wanted.bars[stock] as number, pieces);
    if (count <= 0) continue;
    const cost = cutting.stocks[stock]?.cost ?? 0;
    bars[stock] = Math.min(prices.bars[stock] as number, cost * scale - (priced.most[stock] as number));
    total += (bars[stock] as number) * count;
  }
  return { pieces: prices.pieces, bars, scale, bound: total / scale };
}
