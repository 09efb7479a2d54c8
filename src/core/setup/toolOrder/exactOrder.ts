import type { Task, Visit } from './batches.js';

/** So many batches are put in the best order of all; more would take too long. */
export const mostExact = 14;

/**
 * The order of at most 14 batches that costs least of all orders.
 *
 * Formula: dynamic programming over subsets of the batches and the set that stands in the press when they are done
 *   (Bellman, Held and Karp)
 */
export function exactOrder({ sets, change, batches }: Task): Visit[] {
  const count = sets.length;
  const whole = (1 << batches.length) - 1;
  const least = new Float64Array((whole + 1) * count).fill(Infinity);
  const costBefore = (done: number, set: number) => least[done * count + set] ?? Infinity;
  // What it costs to do a batch from the set in the press until another set stands there.
  const doing = batches.map(({ sets: own, through }) =>
    change.map((from) =>
      own.map((_, last) =>
        Math.min(...own.map((set, first) => (from[set] ?? 0) + (through[first]?.[last] ?? Infinity))),
      ),
    ),
  );
  batches.forEach(({ sets: own, through }, batch) => {
    own.forEach((set, last) => {
      const first = own.map((_, each) => through[each]?.[last] ?? Infinity);
      least[(1 << batch) * count + set] = Math.min(...first);
    });
  });
  for (let done = 1; done < whole; done++) {
    for (let set = 0; set < count; set++) {
      const cost = costBefore(done, set);
      if (cost === Infinity) continue;
      for (let batch = 0; batch < batches.length; batch++) {
        if ((done >> batch) & 1) continue;
        const own = batches[batch]?.sets ?? [];
        const added = doing[batch]?.[set] ?? [];
        const after = (done | (1 << batch)) * count;
        for (let last = 0; last < own.length; last++) {
          const at = after + (own[last] ?? 0);
          least[at] = Math.min(least[at] ?? Infinity, cost + (added[last] ?? Infinity));
        }
      }
    }
  }
  return backwards();

  /** From the cheapest end, the visits that its cost is made of. */
  function backwards(): Visit[] {
    const visits: Visit[] = [];
    let done = whole;
    let set = sets.reduce(
      (best, _, each) => (costBefore(done, each) < costBefore(done, best) ? each : best),
      0,
    );
    while (done !== 0) {
      const cost = costBefore(done, set);
      const found = visitBefore(done, set, cost);
      visits.unshift(found.visit);
      done &= ~(1 << found.visit.batch);
      set = found.from;
    }
    return visits;
  }

  function visitBefore(done: number, set: number, cost: number): { visit: Visit; from: number } {
    for (const [batch, { sets: own, through }] of batches.entries()) {
      const last = own.indexOf(set);
      if (last < 0 || !((done >> batch) & 1)) continue;
      const before = done & ~(1 << batch);
      for (const [first, entered] of own.entries()) {
        const within = through[first]?.[last] ?? Infinity;
        const visit = { batch, first, last };
        if (before === 0 && within === cost) return { visit, from: 0 };
        for (const [from, table] of change.entries()) {
          if (costBefore(before, from) + (table[entered] ?? 0) + within === cost) return { visit, from };
        }
      }
    }
    throw new Error('the order of tools cannot be found again from its cost');
  }
}
