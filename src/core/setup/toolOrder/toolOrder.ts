import { type Task, taskOf, turnedRound, type Visit } from './batches.js';
import { changeCost, type Changes, changesOf, type ToolSet } from './changes.js';
import { exactOrder, mostExact } from './exactOrder.js';
import { leastChanges } from './leastChanges.js';
import { quickOrder } from './quickOrder.js';
import { throughPath } from './through.js';

/** One operation in an order: a mark with one of its sets, and the changes up to there. */
export interface Operation {
  /** The place of the mark in the list. */
  mark: number;
  set: ToolSet;
  soFar: Changes;
}

/** An order, its changes, and how many no order of its kind goes below. */
export interface Ordered {
  operations: readonly Operation[];
  changes: Changes;
  least: Changes;
}

export interface ToolOrder {
  /** Each mark is finished before the next begins. */
  byMark: Ordered;
  /** All marks that need a set are worked before the set is changed. */
  byTool: Ordered;
  /** The one with fewer changes; `mark` where both have as few. */
  better: 'mark' | 'tool';
}

/**
 * The order of some marks with the fewest changes of holder, then of tools (punch or die or both), then of single
 * punches and dies. The tools that stand in the press first are no change.
 *
 * Formula: up to 14 marks by dynamic programming over subsets, the best order of all; beyond that the nearest next,
 *   improved, with a number that no order goes below. Marks that need one set, and the same, count as one.
 * @param marks the sets of tools that each mark needs, by keys; a mark without any is left out
 * @returns both ways of working, each mark finished or all marks of a set, with their changes and bounds
 * Valid for marks of up to 12 sets each; throws `invalid` beyond.
 * @example toolOrder([[a], [b], [a]]).byMark.changes // { holders: 0, tools: 1 }: 1, 3, 2
 * Source: Held and Karp, A dynamic programming approach to sequencing problems, 1962, for the best order; the rest
 *   common practice, no source.
 */
export function toolOrder(marks: readonly (readonly ToolSet[])[]): ToolOrder {
  const task = taskOf(marks);
  const byMark = ordered(operationsByMark(task), isExact(task) ? undefined : leastOf(task));
  const single = taskOf(task.sets.map((set) => [set]));
  const byTool = ordered(operationsByTool(task, single), isExact(single) ? undefined : leastOf(single));
  return { byMark, byTool, better: isFewer(byTool.changes, byMark.changes) ? 'tool' : 'mark' };
}

function isExact({ batches }: Task): boolean {
  return batches.length <= mostExact;
}

/** Turned round, an order costs the same: of the two, the one that begins with what stands first in the list. */
function orderOf(task: Task): Visit[] {
  const visits = isExact(task) ? exactOrder(task) : quickOrder(task);
  const listed = (visit: Visit | undefined) => task.batches[visit?.batch ?? 0]?.marks[0] ?? 0;
  if (listed(visits[0]) <= listed(visits.at(-1))) return visits;
  return visits.map(turnedRound).reverse();
}

type Worked = Pick<Operation, 'mark' | 'set'>;

function operationsByMark(task: Task): Worked[] {
  return orderOf(task).flatMap(({ batch, first, last }) => {
    const { sets = [], marks = [] } = task.batches[batch] ?? {};
    const path = throughPath(sets, task.change, first, last);
    return marks.flatMap((mark) => path.flatMap((number) => worked(task, mark, number)));
  });
}

/** The sets in their own best order, each with all marks that need it. */
function operationsByTool(task: Task, single: Task): Worked[] {
  return orderOf(single).flatMap(({ batch }) => {
    const number = single.batches[batch]?.sets[0] ?? 0;
    const needing = task.batches.filter(({ sets }) => sets.includes(number)).flatMap(({ marks }) => marks);
    return needing.sort((a, b) => a - b).flatMap((mark) => worked(single, mark, number));
  });
}

function worked({ sets }: Task, mark: number, number: number): Worked[] {
  const set = sets[number];
  return set ? [{ mark, set }] : [];
}

/** Counts the changes along an order. One that is the best of all is its own bound. */
function ordered(worked: readonly Worked[], least: Changes | undefined): Ordered {
  let cost = 0;
  let before: ToolSet | undefined;
  const operations = worked.map(({ mark, set }): Operation => {
    if (before) cost += changeCost(before, set);
    before = set;
    return { mark, set, soFar: changesOf(cost) };
  });
  const changes = changesOf(cost);
  return { operations, changes, least: least ?? changes };
}

/** The bounds of holders and of sets, each for itself. */
function leastOf({ batches, sets }: Task): Changes {
  const keys = (of: (set: ToolSet) => string) =>
    batches.map((batch) => [
      ...new Set(batch.sets.flatMap((number) => (sets[number] ? [of(sets[number])] : []))),
    ]);
  return {
    holders: leastChanges(keys(({ holder }) => holder)),
    tools: leastChanges(keys((set) => `${sets.indexOf(set)}`)),
  };
}

function isFewer(a: Changes, b: Changes): boolean {
  return a.holders < b.holders || (a.holders === b.holders && a.tools < b.tools);
}
