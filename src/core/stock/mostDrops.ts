import type { Cutting, Packing, Pattern } from './cutting.js';
import type { RestOf } from './keepDrops.js';
import type { LinearColumn, LinearRow, LinearSolver } from './linearSolver.js';
import { takenBy } from './patterns.js';
import { nodeWork, wholeColumnWork, wholeIterationWork, type Work } from './work.js';

/** Where there are more ways to fill the bars, no program is made of them. */
const mostFills = 2000;
const mostNodes = 50_000;
const mostWork = 3e5;
const nodes = 2000;
/** What a drop counts, in mm, so that of plans that keep as much the one with fewer drops is taken. */
const dropMm = 0.01;

/**
 * Of the same bars and pieces the plan that keeps the most, and as much in the fewest drops: every way to fill a bar as
 * one program in whole numbers, where there are not too many.
 *
 * @param cutting items and stocks
 * @param packing the plan
 * @param restOf what room on a bar comes to
 * @param solver of linear programs
 * @param work counted
 * @returns the plan; undefined where there are too many ways, or the search ended before it found one
 * Valid for every plan. Throws nothing.
 * @example mostDrops(cutting, packing, restOf, solver, work)?.runs
 * Source: branch and bound of the solver.
 */
export function mostDrops(
  cutting: Cutting,
  packing: Packing,
  restOf: RestOf,
  solver: LinearSolver,
  work: Work,
): Packing | undefined {
  const pieces = new Array<number>(cutting.items.length).fill(0);
  const bars = new Array<number>(cutting.stocks.length).fill(0);
  for (const { pattern, bars: times } of packing.runs) {
    bars[pattern.stock] = (bars[pattern.stock] as number) + times;
    pattern.items.forEach((item, k) => {
      pieces[item] = (pieces[item] as number) + times * (pattern.counts[k] as number);
    });
  }
  const fills = everyFill(cutting, pieces, bars, work);
  if (!fills) return undefined;
  const rows: LinearRow[] = [...pieces, ...bars].map((count) => ({ least: count, most: count }));
  const columns = fills.map(({ pattern, room }): LinearColumn => {
    const { rest, isKept } = restOf(room, pattern.stock);
    return {
      cost: isKept ? dropMm - rest : 0,
      rows: [...pattern.items, cutting.items.length + pattern.stock],
      values: [...pattern.counts, 1],
      most: bars[pattern.stock] as number,
    };
  });
  const iterationWork = wholeIterationWork(rows.length + columns.length);
  const answer = solver.solveWhole(rows, columns, {
    nodes,
    iterations: Math.floor(mostWork / iterationWork),
    nearEnough: dropMm / 10,
    isStopped: () => work.isStopped(),
  });
  work.add(columns.length * wholeColumnWork + answer.iterations * iterationWork);
  if (!answer.columns) return undefined;
  const times = answer.columns;
  const runs = fills
    .map(({ pattern }, at) => ({ pattern, bars: Math.round(times[at] as number) }))
    .filter((run) => run.bars > 0);
  return { runs, short: packing.short };
}

interface RoomyPattern {
  pattern: Pattern;
  room: number;
}

/** Every choice of the pieces that fits a bar, full or not; undefined where there are too many. */
function everyFill(
  cutting: Cutting,
  pieces: readonly number[],
  bars: readonly number[],
  work: Work,
): RoomyPattern[] | undefined {
  const found: RoomyPattern[] = [];
  const used = cutting.items.map((_, item) => item).filter((item) => (pieces[item] as number) > 0);
  // Each alone is a way, and each is a step down.
  if (used.length > mostFills) return undefined;
  const counts = used.map(() => 0);
  let visited = 0;
  const visit = (stock: number, capacity: number, at: number, room: number): boolean => {
    if (++visited > mostNodes) return false;
    const item = used[at];
    if (item === undefined) {
      const kept = used
        .map((each, k) => ({ item: each, count: counts[k] as number }))
        .filter(({ count }) => count > 0);
      const pattern = { stock, items: kept.map((each) => each.item), counts: kept.map(({ count }) => count) };
      const left = capacity - takenBy(cutting, pattern.items, pattern.counts);
      if (kept.length > 0 && left >= 0) found.push({ pattern, room: left });
      return found.length <= mostFills;
    }
    const size = cutting.items[item]?.size ?? 1;
    const most = Math.min(pieces[item] as number, Math.floor(room / size));
    for (counts[at] = 0; (counts[at] as number) <= most; counts[at] = (counts[at] as number) + 1)
      if (!visit(stock, capacity, at + 1, room - (counts[at] as number) * size)) return false;
    counts[at] = 0;
    return true;
  };
  const isComplete = cutting.stocks.every(
    ({ capacity }, stock) => bars[stock] === 0 || visit(stock, capacity, 0, capacity),
  );
  work.add(visited * nodeWork(cutting));
  return isComplete ? found : undefined;
}
