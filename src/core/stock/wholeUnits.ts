import type { Cutting, Item, StockBar } from './cutting.js';
import type { RestOf } from './keepDrops.js';
import type { StockPart, StockProblem } from './stockProblem.js';

const nanometersPerMm = 1e6;
/** Lengths that are nearer than this to a whole nanometer are one. */
const toleranceNm = 1e-3;
const toleranceMm = 1e-6;
/** Where miters bring numbers that no grid holds. */
const miterGridNm = 2500;

/**
 * A stock problem in whole units, with like parts as one.
 *
 * Without miters a piece takes l + k, and the unit is the greatest length that all of these are whole multiples of, so
 * nothing is lost (lengths are whole nanometers; others are rounded up to one). With miters the unit is at most
 * 2.5 µm; sizes are rounded up, and half a unit is added for each mitered face, because the places of faces are rounded
 * to the nearest: a mitered piece counts at most 3 units, 0.0075 mm, more than it takes, a square one nothing.
 * @param problem checked; lengths in mm, angles in rad
 * @returns items by falling size, stocks by place
 * Valid for every checked problem. Throws nothing.
 * @example wholeUnits(problem).items[0].size
 * Source: own.
 */
export function wholeUnits(problem: StockProblem): Cutting {
  const isSquare = problem.parts.every((part) => part.leanLeftRad === 0 && part.leanRightRad === 0);
  const unitNm = unitNmOf(problem);
  const placeOf = (leanRad: number) => {
    const place = Math.round(
      (placeOfFace(leanRad, problem.widthMm, problem.kerfMm) * nanometersPerMm) / unitNm,
    );
    // Turned over, a face leans the other way. `+ 0` because a square one has no sign.
    return (problem.turning === 'over and round' ? Math.abs(place) : place) + 0;
  };
  return {
    items: itemsOf(problem, unitNm, placeOf),
    placeOf,
    isDirected: problem.turning === 'none',
    isSquare,
    ...stocksOf(problem, unitNm),
  };
}

function unitNmOf(problem: StockProblem): number {
  const squares = problem.parts.filter((part) => part.leanLeftRad === 0 && part.leanRightRad === 0);
  const kerfNm = nanometersUp(problem.kerfMm);
  const base = squares.reduce((sum, part) => greatestDivisor(sum, nanometersUp(part.lengthMm) + kerfNm), 0);
  if (squares.length === problem.parts.length) return base;
  return base === 0 ? miterGridNm : base / Math.ceil(base / miterGridNm);
}

/** The rest of a bar that leaves so many units of its capacity, in mm. */
export function restOfRoom(problem: StockProblem): RestOf {
  const { gripMm, kerfMm, keepMm } = problem;
  const unitMm = unitNmOf(problem) / nanometersPerMm;
  return (room) => {
    const rest = Math.max(0, room * unitMm + (gripMm > 0 ? gripMm : -kerfMm));
    return { rest, isKept: rest > toleranceMm && rest >= keepMm - toleranceMm };
  };
}

/** Where a face stands: see the model of the miters. */
export function placeOfFace(leanRad: number, widthMm: number, kerfMm: number): number {
  const lean = Math.abs(leanRad);
  const place = (widthMm * Math.tan(lean)) / 2 + kerfMm / (2 * Math.cos(lean)) - kerfMm / 2;
  return leanRad < 0 ? -place : place;
}

/** What a piece takes along the middle of its width, with half of what each of its cuts takes. */
export function sizeMm(part: StockPart, widthMm: number, kerfMm: number): number {
  const leans = [part.leanLeftRad, part.leanRightRad].map(Math.abs);
  return leans.reduce(
    (size, lean) => size - (widthMm * Math.tan(lean)) / 2 + kerfMm / (2 * Math.cos(lean)),
    part.lengthMm,
  );
}

function itemsOf(problem: StockProblem, unitNm: number, placeOf: (leanRad: number) => number): Item[] {
  const { widthMm, kerfMm, turning } = problem;
  const byKey = new Map<string, Item & { parts: { part: number; pieces: number }[] }>();
  problem.parts.forEach((part, at) => {
    const places = [part.leanLeftRad, part.leanRightRad].map(placeOf);
    if (turning !== 'none') places.sort((a, b) => a - b);
    const [left = 0, right = 0] = places;
    const faces = [part.leanLeftRad, part.leanRightRad].filter((lean) => lean !== 0).length;
    const size =
      faces === 0
        ? Math.round((nanometersUp(part.lengthMm) + nanometersUp(kerfMm)) / unitNm)
        : Math.ceil((sizeMm(part, widthMm, kerfMm) * nanometersPerMm) / unitNm + faces / 2);
    const key = `${String(size)} ${String(left)} ${String(right)}`;
    const item = byKey.get(key) ?? { size, left, right, demand: 0, parts: [] };
    item.demand += part.pieces;
    item.parts.push({ part: at, pieces: part.pieces });
    byKey.set(key, item);
  });
  return [...byKey.values()].sort((a, b) => b.size - a.size || a.left - b.left || a.right - b.right);
}

function stocksOf(problem: StockProblem, unitNm: number): { stocks: StockBar[]; costStep: number } {
  const { kerfMm, trimMm, gripMm } = problem;
  const prices = problem.stocks.map(({ price, lengthMm }) => price ?? lengthMm);
  const grid = priceGrid(Math.max(...prices));
  const costs = prices.map((price) => Math.round(price / grid));
  const step = costs.reduce(greatestDivisor, 0) || 1;
  // The last cut runs off the end of a bar that nothing holds.
  const lostNm = nanometersUp(trimMm) + nanometersUp(gripMm) - (gripMm > 0 ? 0 : nanometersUp(kerfMm));
  const stocks = problem.stocks.map(({ lengthMm, available }, at) => ({
    capacity: Math.max(0, Math.floor((nanometersDown(lengthMm) - lostNm) / unitNm + 1e-9)),
    cost: (costs[at] as number) / step,
    available: available ?? Infinity,
  }));
  return { stocks, costStep: step * grid };
}

/** Prices, and lengths that stand for them, count to ten digits of the highest. */
function priceGrid(highest: number): number {
  return highest === 0 ? 1 : 10 ** (Math.ceil(Math.log10(highest)) - 10);
}

function nanometersUp(mm: number): number {
  return Math.ceil(mm * nanometersPerMm - toleranceNm);
}

function nanometersDown(mm: number): number {
  return Math.floor(mm * nanometersPerMm + toleranceNm);
}

function greatestDivisor(one: number, other: number): number {
  while (other > 0) [one, other] = [other, one % other];
  return one;
}
