import { refuse } from '../../inputError.js';

/** What a change between two sets costs, by their numbers. */
export type ChangeTable = readonly (readonly number[])[];

const mostSets = 12;

/**
 * The least costs of working through all sets of a mark, each once, from every first to every last one (their places in
 * `sets`); Infinity where first and last are the same and others remain. Dynamic programming over subsets.
 */
export function throughCosts(sets: readonly number[], change: ChangeTable): number[][] {
  return sets.map((_, first) => lasts(sets, change, first).at(-1) ?? []);
}

/** The order of the sets that such a cost stands for. */
export function throughPath(
  sets: readonly number[],
  change: ChangeTable,
  first: number,
  last: number,
): number[] {
  const costs = lasts(sets, change, first);
  const path = [last];
  let done = (1 << sets.length) - 1;
  for (let at = last; at !== first; ) {
    const before = done & ~(1 << at);
    const cost = costs[done]?.[at] ?? 0;
    const from = sets.findIndex(
      (_, each) =>
        (before >> each) & 1 && (costs[before]?.[each] ?? 0) + stepOf(sets, change, each, at) === cost,
    );
    path.unshift(from);
    [done, at] = [before, from];
  }
  return path.map((each) => sets[each] ?? 0);
}

/** The least cost of each subset that begins with `first`, by its last set. */
function lasts(sets: readonly number[], change: ChangeTable, first: number): number[][] {
  const count = sets.length;
  if (count > mostSets) {
    refuse(
      'Tools',
      String(count),
      `one mark needs ${count} sets of tools.`,
      `Give marks of up to ${mostSets}.`,
    );
  }
  const costs = Array.from({ length: 1 << count }, () => sets.map(() => Infinity));
  const start = costs[1 << first];
  if (start) start[first] = 0;
  for (let done = 0; done < costs.length; done++) {
    for (let at = 0; at < count; at++) {
      const cost = costs[done]?.[at] ?? Infinity;
      if (cost === Infinity) continue;
      for (let next = 0; next < count; next++) {
        const after = costs[done | (1 << next)];
        if (!after || (done >> next) & 1) continue;
        after[next] = Math.min(after[next] ?? Infinity, cost + stepOf(sets, change, at, next));
      }
    }
  }
  return costs;
}

function stepOf(sets: readonly number[], change: ChangeTable, from: number, to: number): number {
  return change[sets[from] ?? 0]?.[sets[to] ?? 0] ?? 0;
}
