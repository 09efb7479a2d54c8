import { changeBetween, endsOf, type Task, turnedRound, type Visit } from './batches.js';

/** So many changes of an order are looked at, counted and not timed, so that the result is the same everywhere. */
const mostLooks = 8e6;

/**
 * Improves an order until neither turning a part of it round nor moving a single batch makes it cheaper, or until
 * enough was tried.
 */
export function improved(task: Task, start: readonly Visit[]): Visit[] {
  const visits = [...start];
  const search: Search = { task, visits, looks: 0 };
  while (search.looks < mostLooks) {
    const turned = turnParts(search);
    const moved = moveBatches(search);
    if (!turned && !moved) break;
  }
  return visits;
}

interface Search {
  task: Task;
  visits: Visit[];
  looks: number;
}

/** Turns a part of the order round wherever that is cheaper: only the changes at its two ends differ. */
function turnParts(search: Search): boolean {
  const { task, visits } = search;
  let better = false;
  const between = (from?: number, to?: number) => changeBetween(task, from, to);
  for (let from = 0; from < visits.length - 1 && search.looks < mostLooks; from++) {
    for (let to = from + 1; to < visits.length; to++) {
      search.looks += 1;
      const [before, start, end, after] = [from - 1, from, to, to + 1].map((at) => endsOf(task, visits[at]));
      const now = between(before?.last, start?.first) + between(end?.last, after?.first);
      const then = between(before?.last, end?.last) + between(start?.first, after?.first);
      if (then >= now) continue;
      const part = visits.slice(from, to + 1).reverse();
      visits.splice(from, part.length, ...part.map(turnedRound));
      better = true;
    }
  }
  return better;
}

/** Moves single batches to where they are cheapest, worked through from whichever set to whichever. */
function moveBatches(search: Search): boolean {
  const { task, visits } = search;
  let better = false;
  for (let at = 0; at < visits.length && search.looks < mostLooks; at++) {
    const [visit] = visits.splice(at, 1);
    if (!visit) continue;
    let best = { at, visit, cost: addedBy(task, visits, visit, at) };
    const stayed = best;
    const ways = waysThrough(task, visit.batch);
    for (let place = 0; place <= visits.length; place++) {
      for (const way of ways) {
        const cost = addedBy(task, visits, way, place);
        if (cost < best.cost) best = { at: place, visit: way, cost };
      }
    }
    search.looks += ways.length * (visits.length + 1);
    visits.splice(best.at, 0, best.visit);
    if (best !== stayed) better = true;
  }
  return better;
}

function waysThrough({ batches }: Task, batch: number): Visit[] {
  const { through = [] } = batches[batch] ?? {};
  return through.flatMap((costs, first) =>
    costs.flatMap((cost, last) => (cost === Infinity ? [] : [{ batch, first, last }])),
  );
}

/** What a visit at a place adds to the cost of the others. */
function addedBy(task: Task, visits: readonly Visit[], visit: Visit, place: number): number {
  const [before, after] = [endsOf(task, visits[place - 1]).last, endsOf(task, visits[place]).first];
  const { first, last } = endsOf(task, visit);
  const within = task.batches[visit.batch]?.through[visit.first]?.[visit.last] ?? 0;
  const parted = changeBetween(task, before, after);
  return changeBetween(task, before, first) + within + changeBetween(task, last, after) - parted;
}
