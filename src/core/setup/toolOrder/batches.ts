import { changeCost, type ToolSet } from './changes.js';
import { type ChangeTable, throughCosts } from './through.js';

/** Marks that are worked in one go, with the sets of tools that each of them needs. */
export interface Batch {
  /** Their places in the list. */
  marks: readonly number[];
  /** The numbers of their sets. */
  sets: readonly number[];
  /** The least cost of working through all of them, by the place of the first and of the last in `sets`. */
  through: readonly (readonly number[])[];
}

/** What is to be put in order. */
export interface Task {
  /** The different sets, by number. */
  sets: readonly ToolSet[];
  change: ChangeTable;
  batches: readonly Batch[];
}

/**
 * Numbers the sets of some marks. Marks that need the same one set are one batch: a change is never dearer than two
 * changes by way of a third set, so doing them together is never worse. A mark that needs no tools is in none.
 */
export function taskOf(marks: readonly (readonly ToolSet[])[]): Task {
  const numbers = new Map<string, number>();
  const sets: ToolSet[] = [];
  const numberOf = (set: ToolSet) => {
    const key = JSON.stringify([set.holder, set.punch, set.die]);
    const number = numbers.get(key) ?? sets.push(set) - 1;
    numbers.set(key, number);
    return number;
  };
  const needed = marks.map((own) => [...new Set(own.map(numberOf))]);
  const change = sets.map((from) => sets.map((to) => changeCost(from, to)));
  const together = new Map<string, number[]>();
  needed.forEach((own, mark) => {
    if (own.length === 0) return;
    const key = own.length === 1 ? `set ${own[0]}` : `mark ${mark}`;
    together.set(key, [...(together.get(key) ?? []), mark]);
  });
  const batches = [...together.values()].map((members): Batch => {
    const own = needed[members[0] ?? 0] ?? [];
    return { marks: members, sets: own, through: throughCosts(own, change) };
  });
  return { sets, change, batches };
}

/** A batch in an order, with the places of its first and last set in `sets`. */
export interface Visit {
  batch: number;
  first: number;
  last: number;
}

/** The same batch, worked through the other way. */
export function turnedRound({ batch, first, last }: Visit): Visit {
  return { batch, first: last, last: first };
}

/** The sets that stand in the press before and after a visit; undefined where there is no visit. */
export function endsOf({ batches }: Task, visit: Visit | undefined): { first?: number; last?: number } {
  const sets = visit && batches[visit.batch]?.sets;
  const [first, last] = [sets?.[visit?.first ?? 0], sets?.[visit?.last ?? 0]];
  return first === undefined || last === undefined ? {} : { first, last };
}

/** What it costs to change from one set to the next; nothing at either end of the order. */
export function changeBetween({ change }: Task, from: number | undefined, to: number | undefined): number {
  return from === undefined || to === undefined ? 0 : (change[from]?.[to] ?? 0);
}

/** What an order of the batches costs. */
export function costOf(task: Task, visits: readonly Visit[]): number {
  let cost = 0;
  let before: number | undefined;
  for (const visit of visits) {
    const { first, last } = endsOf(task, visit);
    cost +=
      changeBetween(task, before, first) +
      (task.batches[visit.batch]?.through[visit.first]?.[visit.last] ?? 0);
    before = last;
  }
  return cost;
}
