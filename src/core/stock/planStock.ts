import { requireStockProblem } from './checkProblem.js';
import { costOf, shortOf, type Cutting } from './cutting.js';
import { bestFit } from './fitDecreasing.js';
import { incumbent, type Incumbent } from './incumbent.js';
import { keepDrops } from './keepDrops.js';
import { layOut } from './layOut.js';
import { materialBound } from './materialBound.js';
import { mostDrops } from './mostDrops.js';
import { takenBy, tidy } from './patterns.js';
import type { LinearSolver } from './linearSolver.js';
import { mostWork, solveStock, usualLimits, type SolveLimits } from './solveStock.js';
import { countWork } from './work.js';
import type { Shortage, StockPlan } from './stockPlan.js';
import type { StockProblem } from './stockProblem.js';
import { correctValues } from './valueCorrection.js';
import { verifyPlan } from './verifyPlan.js';
import { restOfRoom, wholeUnits } from './wholeUnits.js';

export interface PlanOptions {
  /** Without it, the plan is made by steps alone. */
  solver?: LinearSolver;
  /** Called with every better plan, verified, and with every better bound. */
  onBest?: (plan: StockPlan) => void;
  /** What to stop at; those left out are as usual. */
  limits?: Partial<SolveLimits>;
  /** A clock that ends the search where it goes on for too long. A plan that it ended says so: it may differ the next time. */
  clock?: { now: () => number; longestMs: number };
}

const roundsOfCorrection = 30;
/** What these may spend. */
const mostCorrection = 1e6;

/**
 * The bars to buy for a list of parts of one section and grade, and what is cut from each. The purchase comes first.
 * Then the same bars are cut so that more length is left in drops worth keeping, then in fewer of them: by a search that
 * never makes them less, and where the ways to fill the bars are few by a program of them all.
 *
 * Steps: first-fit and best-fit decreasing, then sequential value correction, with a bound by material; then, with a
 * solver, column generation with its bound, dives, and a proof by all patterns within the gap, or where there are several
 * lengths the search for the cheapest bars; last, the drops. Where pieces find no bar, it says whether that is proven or
 * only what was found. Every plan is verified before it is handed out. Limits are counts, so the same problem always gives the same plan.
 * @param problem lengths in mm, angles in rad
 * @param options the solver, who wants to hear of better plans, limits
 * @returns the plan; `proof` speaks of the purchase alone
 * Valid for up to 100,000 pieces.
 * Throws InputError for a problem that cannot be planned, Error where a plan fails its verification.
 * @example planStock(problem).purchase
 * Source: see each step.
 */
export function planStock(problem: StockProblem, options: PlanOptions = {}): StockPlan {
  const { solver, clock } = options;
  const start = clock?.now() ?? 0;
  const limits = { ...usualLimits, ...options.limits };
  requireStockProblem(problem);
  const { cutting, tooLong } = withoutTooLong(wholeUnits(problem));
  const work = countWork(
    () => clock !== undefined && clock.now() - start > clock.longestMs,
    mostWork(cutting, limits),
  );
  let isByPatterns = false;
  const planned = (): StockPlan => {
    const plan = planOf(problem, cutting, tooLong, best);
    if (plan.proof !== undefined && isByPatterns) plan.proof = 'by patterns';
    return { ...plan, by: solver ? 'solver' : 'steps only', isStopped: work.isStopped() };
  };
  const best = incumbent(cutting, () => options.onBest?.(planned()));
  best.raise(materialBound(cutting));
  best.isShort = !isEnoughMaterial(cutting);
  for (const packing of bestFit(cutting)) best.offer(packing);
  if (!best.isDone())
    correctValues(
      cutting,
      roundsOfCorrection,
      (packing) => {
        best.offer(tidy(cutting, packing));
        return best.isDone() || work.spent > mostCorrection || work.isOver();
      },
      work,
    );
  if (solver && !best.isDone()) isByPatterns = solveStock(cutting, solver, best, limits, work);
  const plan = planned();
  if (!best.packing) return plan;
  // The same bars, cut otherwise. What counts are the drops as they are laid out.
  const restOf = restOfRoom(problem);
  const kept = keepDrops(cutting, best.packing, restOf);
  const most = solver && mostDrops(cutting, kept, restOf, solver, work);
  return [kept, most].reduce<StockPlan>((chosen, packing) => {
    if (!packing) return chosen;
    best.replace(packing);
    const other = planned();
    return keepsMore(other, chosen) ? other : chosen;
  }, plan);
}

/** Whether one plan has more length in drops worth keeping, or as much in fewer. */
function keepsMore(one: StockPlan, other: StockPlan): boolean {
  const of = (plan: StockPlan) => {
    const kept = plan.bars.filter(({ isKept }) => isKept);
    return {
      mm: kept.reduce((sum, { restMm, bars }) => sum + restMm * bars, 0),
      drops: kept.reduce((sum, { bars }) => sum + bars, 0),
    };
  };
  const [a, b] = [of(one), of(other)];
  return a.mm > b.mm + 1e-6 || (a.mm >= b.mm && a.drops < b.drops);
}

function isEnoughMaterial({ items, stocks }: Cutting): boolean {
  const needed = items.reduce((sum, item) => sum + item.size * item.demand, 0);
  const had = stocks.reduce(
    (sum, { capacity, available }) => sum + (capacity > 0 ? capacity * available : 0),
    0,
  );
  return needed <= had;
}

/** Leaves the items aside that no bar holds. */
function withoutTooLong(all: Cutting): { cutting: Cutting; tooLong: Shortage[] } {
  const longest = Math.max(
    0,
    ...all.stocks.filter((stock) => stock.available > 0).map((stock) => stock.capacity),
  );
  const fits = all.items.map((_, i) => takenBy(all, [i], [1]) <= longest);
  const tooLong = all.items
    .filter((_, i) => !fits[i])
    .flatMap(({ parts }) => parts.map((each) => ({ ...each, why: 'too long' as const })));
  return { cutting: { ...all, items: all.items.filter((_, i) => fits[i]) }, tooLong };
}

function planOf(
  problem: StockProblem,
  cutting: Cutting,
  tooLong: readonly Shortage[],
  best: Incumbent,
): StockPlan {
  const packing = best.packing ?? { runs: [], short: [] };
  const why = best.isShort ? 'not enough bars' : 'none found';
  const { bars, shortages } = layOut(problem, cutting, packing, why);
  const purchase = bars.reduce((sum, { stock, bars: count }) => {
    const { price, lengthMm = 0 } = problem.stocks[stock] ?? {};
    return sum + count * (price ?? lengthMm);
  }, 0);
  const isShort = shortOf(cutting, packing) > 0;
  const isProven = !isShort && costOf(cutting, packing) <= best.bound;
  const plan: StockPlan = {
    bars,
    shortages: [...tooLong, ...shortages].sort((a, b) => a.part - b.part),
    purchase,
    // A plan that leaves pieces out may always buy less.
    bound: isProven ? purchase : isShort ? 0 : Math.min(purchase, best.bound * cutting.costStep),
    proof: isProven ? 'by bound' : undefined,
    by: 'steps only',
    isStopped: false,
  };
  verifyPlan(problem, plan);
  return plan;
}
