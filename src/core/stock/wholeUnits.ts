import type { Cutting, Item, StockBar } from './cutting.js';
import type { RestOf } from './keepDrops.js';
import type { StockPart, StockProblem } from './stockProblem.js';

/** The finest length that counts; so fine that what it rounds stays below the slack of a bar. */
const ticksPerMm = 1e8;
/** Lengths that are nearer than this to a whole tick are one. */
const toleranceTicks = 0.01;
/** What a bar may be overfilled by: 5 nm. So 500 pieces that are each rounded up to a tick still fit where they just fit. */
const slackTicks = 500;
const toleranceMm = 1e-6;

/**
 * A stock problem in whole units, with like parts as one.
 *
 * Without miters a piece takes l + k. A mitered face adds K − T to that and stands at T + K, with T = b · |tan θ| / 2 and
 * K = (k / cos θ − k) / 2. All are rounded to ticks of 10 pm so that no plan is too tight: T down, the others up; and as
 * one T and one K serve size and place, what cancels in mm cancels in ticks. A bar has a slack of 5 nm, more than that
 * rounding adds up to, so what just fits by hand fits here. The unit is the greatest that all are whole multiples of.
 * @param problem checked; lengths in mm, angles in rad
 * @returns items by falling size, stocks by place
 * Valid for every checked problem. Throws nothing.
 * @example wholeUnits(problem).items[0].size
 * Source: own.
 */
export function wholeUnits(problem: StockProblem): Cutting {
  const leans = problem.parts.flatMap(({ leanLeftRad, leanRightRad }) => [leanLeftRad, leanRightRad]);
  const sizes = problem.parts.map((part) => sizeTicks(part, problem));
  const ticks = unitTicks(problem);
  const placeOf = (leanRad: number) => {
    const place = Math.round(faceTicks(leanRad, problem).place / ticks);
    // Turned over, a face leans the other way. `+ 0` because a square one has no sign.
    return (problem.turning === 'over and round' ? Math.abs(place) : place) + 0;
  };
  return {
    items: itemsOf(problem, sizes, ticks, placeOf),
    placeOf,
    isDirected: problem.turning === 'none',
    isSquare: leans.every((lean) => lean === 0),
    ...stocksOf(problem, ticks),
  };
}

/** The greatest length that sizes and places of faces are whole multiples of. */
function unitTicks(problem: StockProblem): number {
  const places = problem.parts.flatMap(({ leanLeftRad, leanRightRad }) =>
    [leanLeftRad, leanRightRad].map((lean) => Math.abs(faceTicks(lean, problem).place)),
  );
  const sizes = problem.parts.map((part) => sizeTicks(part, problem));
  return [...sizes, ...places].reduce(greatestDivisor, 0) || 1;
}

/** The rest of a bar that leaves so many units of its capacity, in mm, with what the capacity was rounded down by. */
export function restOfRoom(problem: StockProblem): RestOf {
  const { gripMm, kerfMm, keepMm } = problem;
  const unit = unitTicks(problem);
  const unitMm = unit / ticksPerMm;
  const roundedMm = stocksOf(problem, unit).stocks.map(
    ({ capacity }, at) => (problem.stocks[at]?.lengthMm ?? 0) - lostMm(problem) - capacity * unitMm,
  );
  return (room, stock) => {
    const left = room * unitMm + (roundedMm[stock] as number);
    const rest = Math.max(0, left + (gripMm > 0 ? gripMm : -kerfMm));
    return { rest, isKept: rest > toleranceMm && rest >= keepMm - toleranceMm };
  };
}

/** What cannot be used of a bar. */
function lostMm({ kerfMm, trimMm, gripMm }: StockProblem): number {
  // The last cut runs off the end of a bar that nothing holds.
  return trimMm + gripMm - (gripMm > 0 ? 0 : kerfMm);
}

/** Where a face stands: see the model of the miters. */
export function placeOfFace(leanRad: number, widthMm: number, kerfMm: number): number {
  const lean = Math.abs(leanRad);
  const place = (widthMm * Math.tan(lean)) / 2 + kerfMm / (2 * Math.cos(lean)) - kerfMm / 2;
  return leanRad < 0 ? -place : place;
}

/** Where a face stands, and what it adds to its piece. */
function faceTicks(leanRad: number, { widthMm, kerfMm }: StockProblem): { place: number; added: number } {
  const lean = Math.abs(leanRad);
  const overhang = ticksDown((widthMm * Math.tan(lean)) / 2);
  const cut = ticksUp(kerfMm / (2 * Math.cos(lean)) - kerfMm / 2);
  return { place: Math.sign(leanRad) * (overhang + cut), added: cut - overhang };
}

/** What a piece takes along the middle of its width, with half of what each of its cuts takes. */
function sizeTicks(part: StockPart, problem: StockProblem): number {
  const [left, right] = [faceTicks(part.leanLeftRad, problem), faceTicks(part.leanRightRad, problem)];
  return Math.max(1, ticksUp(part.lengthMm + problem.kerfMm) + left.added + right.added);
}

function itemsOf(
  { parts, turning }: StockProblem,
  sizes: readonly number[],
  ticks: number,
  placeOf: (leanRad: number) => number,
): Item[] {
  const byKey = new Map<string, Item & { parts: { part: number; pieces: number }[] }>();
  parts.forEach((part, at) => {
    const places = [part.leanLeftRad, part.leanRightRad].map(placeOf);
    if (turning !== 'none') places.sort((a, b) => a - b);
    const [left = 0, right = 0] = places;
    const size = Math.round((sizes[at] as number) / ticks);
    const key = `${String(size)} ${String(left)} ${String(right)}`;
    const item = byKey.get(key) ?? { size, left, right, demand: 0, parts: [] };
    item.demand += part.pieces;
    item.parts.push({ part: at, pieces: part.pieces });
    byKey.set(key, item);
  });
  return [...byKey.values()].sort((a, b) => b.size - a.size || a.left - b.left || a.right - b.right);
}

function stocksOf(problem: StockProblem, ticks: number): { stocks: StockBar[]; costStep: number } {
  const prices = problem.stocks.map(({ price, lengthMm }) => price ?? lengthMm);
  const grid = priceGrid(Math.max(...prices));
  const costs = prices.map((price) => Math.round(price / grid));
  const step = costs.reduce(greatestDivisor, 0) || 1;
  const stocks = problem.stocks.map(({ lengthMm, available }, at) => ({
    capacity: Math.max(0, Math.floor(((lengthMm - lostMm(problem)) * ticksPerMm + slackTicks) / ticks)),
    cost: (costs[at] as number) / step,
    available: available ?? Infinity,
  }));
  return { stocks, costStep: step * grid };
}

/** Prices, and lengths that stand for them, count to seven digits of the highest: more is lost on the solver. */
function priceGrid(highest: number): number {
  return highest === 0 ? 1 : 10 ** (Math.ceil(Math.log10(highest)) - 7);
}

function ticksUp(mm: number): number {
  return Math.ceil(mm * ticksPerMm - toleranceTicks);
}

function ticksDown(mm: number): number {
  return Math.floor(mm * ticksPerMm + toleranceTicks);
}

function greatestDivisor(one: number, other: number): number {
  while (other > 0) [one, other] = [other, one % other];
  return one;
}
