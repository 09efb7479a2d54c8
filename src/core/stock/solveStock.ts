import { barsFirst } from './barsFirst.js';
import { isChoice, mostCost, shortOf, type Cutting } from './cutting.js';
import { dive } from './dive.js';
import { everyPattern } from './everyPattern.js';
import { everything } from './fitDecreasing.js';
import { generateColumns, wholeBound, type Dual } from './generateColumns.js';
import { belowOf, type Incumbent } from './incumbent.js';
import type { LinearSolver } from './linearSolver.js';
import { openMaster, type Master } from './master.js';
import { wholePlan } from './wholePlan.js';
import type { Work } from './work.js';

export interface SolveLimits {
  /** All that may be spent before the last program in whole numbers; about microseconds of a usual machine. */
  work: number;
  /** The same where there is a choice of bars: there a gap of a hundredth of a percent is reached long before its proof. */
  workOfChoice: number;
  /** And there for each item of a long list. */
  workAnItem: number;
  dives: number;
  /** What dives may spend in all; about microseconds. */
  diveWork: number;
  /** What the search for bars may spend. */
  barsWork: number;
  /** Patterns within the gap. */
  patterns: number;
  patternNodes: number;
  wholeNodes: number;
  wholeWork: number;
  /** What part of this goes into a plan of the patterns found so far, which proves nothing. */
  restrictedShare: number;
}

export const usualLimits: SolveLimits = {
  work: 6.5e6,
  workOfChoice: 3.5e6,
  workAnItem: 1e4,
  dives: 43,
  diveWork: 3e6,
  barsWork: 2e6,
  patterns: 12_000,
  patternNodes: 3e6,
  wholeNodes: 3000,
  wholeWork: 2e6,
  restrictedShare: 0.25,
};

/** What a plan of the patterns found so far may cost more than the least of them, as a share. */
const restrictedGap = 0.001;

const firstDives = 3;

/** Items beyond which a list is long. */
const longList = 200;

/** What a plan of these items may spend. */
export function mostWork(cutting: Cutting, { work, workOfChoice, workAnItem }: SolveLimits): number {
  if (!isChoice(cutting)) return work;
  return workOfChoice + workAnItem * Math.max(0, cutting.items.length - longList);
}

/**
 * Improves a plan and its bound with a solver of linear programs: column generation for the bound, dives for plans,
 * then, where a gap is left, all patterns that a better plan could have, as one program in whole numbers.
 *
 * A plan that costs at most K uses only patterns whose cost less the worth of their pieces is at most K less the
 * bound. If these make no plan of at most K, none does.
 * @param cutting items and stocks
 * @param solver of linear programs
 * @param best has a plan already, and is told of better plans and bounds
 * @param limits of patterns, nodes and iterations
 * @param work counted
 * @returns whether the plan is proven by its patterns
 * Valid for every cutting. Throws nothing.
 * @example solveStock(cutting, solver, best, usualLimits, work)
 * Source: Gilmore and Gomory 1961 and 1963; columns by reduced cost after Baldacci and others 2008, from memory.
 */
export function solveStock(
  cutting: Cutting,
  solver: LinearSolver,
  best: Incumbent,
  limits: SolveLimits,
  work: Work,
): boolean {
  const wanted = everything(cutting);
  const master = openMaster(cutting, solver, wanted, work);
  try {
    master.add((best.packing?.runs ?? []).map((run) => run.pattern));
    const until = { bound: Infinity, rounds: Infinity, isExact: false };
    const first = generateColumns(cutting, master, wanted, until, work);
    if (!first) return false;
    if (first.bound > mostCost(cutting)) {
      // The bars do not suffice: what is left is to leave out little.
      best.isShort = true;
      restrictedPlan(cutting, solver, best, master, { ...limits, restrictedShare: 1 }, work);
      return false;
    }
    best.raise(first.bound);
    dive(cutting, master, best, { dives: firstDives, work: limits.diveWork, below: Infinity }, work);
    if (best.isDone() || work.isOver()) return false;
    const exact = generateColumns(cutting, master, wanted, { ...until, isExact: true }, work);
    const duals = [first.dual, exact?.dual].filter((dual) => dual !== undefined);
    const dual = duals.reduce((one, other) => (other.bound > one.bound ? other : one));
    best.raise(wholeBound(dual.bound));
    if (best.isDone()) return false;
    if (isChoice(cutting)) {
      barsFirst(cutting, solver, best, { patterns: master.patterns, duals }, limits.barsWork, work);
      if (Number.isFinite(belowOf(cutting, best))) return false;
      if (best.isShort) {
        restrictedPlan(cutting, solver, best, master, { ...limits, restrictedShare: 1 }, work);
        return false;
      }
    }
    // Where few patterns are left, their program is quicker than more dives.
    const few = {
      ...limits,
      patterns: limits.patterns / 10,
      patternNodes: limits.patternNodes / 10,
      wholeWork: limits.wholeWork / 4,
    };
    if (proveByPatterns(cutting, solver, best, dual, few, work) === 'proven') return true;
    if (best.isShort) return false;
    dive(cutting, master, best, { dives: limits.dives, work: limits.diveWork, below: Infinity }, work);
    if (best.isDone() || work.isOver()) return false;
    const answer = proveByPatterns(cutting, solver, best, dual, limits, work);
    // Where all patterns were tried, those found so far were among them.
    if (answer === 'too many') restrictedPlan(cutting, solver, best, master, limits, work);
    return answer === 'proven';
  } finally {
    master.dispose();
  }
}

function proveByPatterns(
  cutting: Cutting,
  solver: LinearSolver,
  best: Incumbent,
  dual: Dual,
  limits: SolveLimits,
  work: Work,
): 'proven' | 'not proven' | 'too many' {
  const below = belowOf(cutting, best);
  const patterns = cutting.stocks.flatMap(({ cost, capacity, available }, stock) => {
    if (available === 0 || capacity === 0) return [];
    // A little less: what is kept too much does no harm.
    const spare = Number.isFinite(below) ? below - dual.bound : Infinity;
    const worth = (cost - spare) * dual.scale;
    const least = worth - Math.abs(worth) * 1e-12 - (dual.bars[stock] as number) - 1;
    const found = everyPattern(
      cutting,
      dual.pieces,
      stock,
      least,
      limits.patterns,
      limits.patternNodes,
      work,
    );
    return found ?? [undefined];
  });
  const all = patterns.filter((pattern) => pattern !== undefined);
  if (all.length < patterns.length || all.length > limits.patterns) return 'too many';
  const wholeLimits = { nodes: limits.wholeNodes, work: limits.wholeWork, nearEnough: 0 };
  const { status, packing } = wholePlan(cutting, solver, all, below, wholeLimits, work);
  if (packing) best.offer(packing);
  if (status === 'stopped') return 'not proven';
  if (!Number.isFinite(belowOf(cutting, best))) {
    // Of all patterns, none leave nothing out.
    if (packing && shortOf(cutting, packing) > 0) best.isShort = true;
    return 'not proven';
  }
  best.raise(belowOf(cutting, best));
  return 'proven';
}

/** The best of the patterns found so far. */
function restrictedPlan(
  cutting: Cutting,
  solver: LinearSolver,
  best: Incumbent,
  master: Master,
  limits: SolveLimits,
  work: Work,
): void {
  const below = belowOf(cutting, best);
  const nearEnough = Number.isFinite(below) ? below * restrictedGap : 0;
  const wholeLimits = {
    nodes: limits.wholeNodes,
    work: limits.wholeWork * limits.restrictedShare,
    nearEnough,
  };
  const { packing } = wholePlan(cutting, solver, master.patterns, below, wholeLimits, work);
  if (packing) best.offer(packing);
}
