import { choiceOfBars, lowered, type Need } from './choiceOfBars.js';
import { mostBars, type Cutting, type Pattern } from './cutting.js';
import { dive } from './dive.js';
import { everything } from './fitDecreasing.js';
import { generateColumns, type Dual } from './generateColumns.js';
import { belowOf, type Incumbent } from './incumbent.js';
import type { LinearSolver } from './linearSolver.js';
import { openMaster, type Master } from './master.js';
import { price } from './pricing.js';
import { wholePlan } from './wholePlan.js';
import type { Work } from './work.js';

const choiceLimits = { nodes: 20_000, iterations: 200_000 };
/** Where dives find no plan from some bars: the program of the patterns found so far. */
const cutLimits = { nodes: 100, work: 2e5, nearEnough: 0 };
const dives = 4;
/** Choices of bars that are left open before dearer ones are tried, and what part of the gap is skipped then. */
const openBeforeDearer = 2;
const skipped = 1 / 4;

interface Search {
  cutting: Cutting;
  solver: LinearSolver;
  best: Incumbent;
  /** Every stock has a row. */
  master: Master;
  work: Work;
}

/**
 * Where there are several lengths: first the bars, then what is cut from them.
 *
 * The cheapest bars that meet every need are tried. Where even parts of patterns do not cut all pieces from them, the
 * prices of the linear program say what any bars must hold together: one more need, and other bars are tried. Where
 * they do, dives look for a plan from these bars. The first bars that are not ruled out are the bound.
 * @param cutting items and stocks
 * @param solver of linear programs
 * @param best has a plan already, and is told of better plans and bounds
 * @param known patterns and prices found so far
 * @param mostWork where it ends
 * @param work counted
 * @returns nothing
 * Valid for every cutting. Throws nothing.
 * @example barsFirst(cutting, solver, best, { patterns, duals }, 2e6, work)
 * Source: own; decomposition after Benders 1962, from memory.
 */
export function barsFirst(
  cutting: Cutting,
  solver: LinearSolver,
  best: Incumbent,
  known: { patterns: readonly Pattern[]; duals: readonly Dual[] },
  mostWork: number,
  work: Work,
): void {
  const end = work.spent + mostWork;
  const stocks = mostBars(cutting).flatMap((bars, at) => (bars > 0 ? [at] : []));
  const master = openMaster(cutting, solver, everything(cutting), work, stocks);
  const search = { cutting, solver, best, master, work };
  const needs = [materialOf(cutting), ...known.duals.map((dual) => needOf(cutting, dual, work))];
  const open: number[][] = [];
  let least = best.bound;
  try {
    master.add(known.patterns);
    while (!best.isDone() && !work.isOver() && work.spent < end) {
      const bars = cheapestBars(search, needs, open, least);
      if (!bars) return;
      const cost = costOfBars(cutting, bars);
      if (open.length === 0) best.raise(cost);
      if (best.isDone()) return;
      const need = cutFrom(search, bars, cost);
      if (need) needs.push(need);
      else {
        open.push(bars);
        const below = belowOf(cutting, best);
        if (open.length > openBeforeDearer && Number.isFinite(below))
          least = cost + Math.ceil((below - cost) * skipped);
      }
    }
  } finally {
    master.dispose();
  }
}

/** Undefined where there are none, or none were found; where that proves something, it is told. */
function cheapestBars(
  { cutting, solver, best, work }: Search,
  needs: readonly Need[],
  open: readonly (readonly number[])[],
  least: number,
): number[] | undefined {
  const below = belowOf(cutting, best);
  const limits = { ...choiceLimits, isStopped: () => work.isStopped() };
  const { status, bars } = choiceOfBars(cutting, solver, needs, open, { least, below }, limits, work);
  if (status === 'none' && open.length === 0) {
    if (Number.isFinite(below)) best.raise(below);
    else best.isShort = true;
  }
  return status === 'best' ? bars : undefined;
}

/** Looks for a plan from these bars; what they lack, where they are ruled out. */
function cutFrom(
  { cutting, solver, best, master, work }: Search,
  bars: number[],
  cost: number,
): Need | undefined {
  const { pieces } = everything(cutting);
  master.setWanted({ pieces, bars });
  const until = { bound: cost + 1, rounds: Infinity, isExact: false, isAnyPlan: true };
  const parts = generateColumns(cutting, master, { pieces, bars }, until, work);
  if (parts?.dual && parts.bound > cost) {
    const need = needOf(cutting, parts.dual, work);
    const held = bars.reduce((sum, count, at) => sum + count * (need.worth[at] as number), 0);
    // By less, the choice would not see it.
    if (held < need.needed * (1 - 2 * lowered)) return need;
  }
  if (!parts || parts.isShort) return undefined;
  const stocks = cutting.stocks.map((stock, at) => ({ ...stock, available: bars[at] as number }));
  const only = { ...cutting, stocks };
  const below = cost + 1;
  dive(only, master, best, { dives, work: 0, below }, work);
  if (belowOf(cutting, best) < below) return undefined;
  const { packing } = wholePlan(only, solver, master.patterns, below, cutLimits, work);
  if (packing) best.offer(packing);
  return undefined;
}

function costOfBars({ stocks }: Cutting, bars: readonly number[]): number {
  return bars.reduce((sum, count, at) => sum + count * (stocks[at]?.cost ?? 0), 0);
}

function materialOf({ items, stocks }: Cutting): Need {
  return {
    worth: stocks.map(({ capacity }) => capacity),
    needed: items.reduce((sum, { size, demand }) => sum + size * demand, 0),
  };
}

/** What prices prove: each bar counts as the most that its pieces are worth. */
function needOf(cutting: Cutting, { pieces: values, scale }: Dual, work: Work): Need {
  const { pieces, bars } = everything(cutting);
  // At these prices of bars, every pattern is worth more than its bar.
  const free = Float64Array.from(cutting.stocks, ({ cost }) => cost * scale);
  return {
    worth: price(cutting, { pieces: values, bars: free, scale }, pieces, bars, work).most,
    needed: cutting.items.reduce((sum, { demand }, i) => sum + demand * (values[i] as number), 0),
  };
}
