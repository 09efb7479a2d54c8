// The cheapest purchase of a small problem by complete enumeration: every choice of pieces, in every order and turning,
// then every choice of bars. It shares nothing with the planner.
import type { StockPart, StockProblem } from '../../../src/core/stock/stockProblem.js';

type Faces = readonly [left: number, right: number];

/** Infinity where the bars do not suffice; parts that no bar holds are left out. */
export function cheapest(problem: StockProblem, slackMm: number): number {
  const fit = fitting(problem, slackMm);
  const wanted = problem.parts.map(({ pieces }, part) => {
    const alone = problem.parts.map((_, at) => (at === part ? 1 : 0));
    return problem.stocks.some((stock, at) => stock.available !== 0 && fit(alone, at)) ? pieces : 0;
  });
  const known = new Map<string, number>();
  const least = (rest: readonly number[], bars: readonly number[]): number => {
    if (rest.every((count) => count === 0)) return 0;
    const key = `${rest.join()}|${bars.join()}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    known.set(key, Infinity);
    let best = Infinity;
    // Some bar holds the first piece that is left.
    const first = rest.findIndex((count) => count > 0);
    bars.forEach((left, stock) => {
      if (left === 0) return;
      const { price, lengthMm } = problem.stocks[stock] as StockProblem['stocks'][number];
      const others = bars.map((count, at) => (at === stock ? count - 1 : count));
      for (const chosen of choices(rest)) {
        if ((chosen[first] ?? 0) === 0 || !fit(chosen, stock)) continue;
        const after = rest.map((count, at) => count - (chosen[at] as number));
        best = Math.min(best, (price ?? lengthMm) + least(after, others));
      }
    });
    known.set(key, best);
    return best;
  };
  const all = wanted.reduce((sum, count) => sum + count, 0);
  return least(
    wanted,
    problem.stocks.map(({ available }) => Math.min(available ?? all, all)),
  );
}

function choices(rest: readonly number[]): number[][] {
  return rest.reduce<number[][]>(
    (found, count) =>
      found.flatMap((each) => Array.from({ length: count + 1 }, (_, taken) => [...each, taken])),
    [[]],
  );
}

function fitting(
  problem: StockProblem,
  slackMm: number,
): (chosen: readonly number[], stock: number) => boolean {
  const { kerfMm, trimMm, gripMm } = problem;
  const needed = new Map<string, number>();
  return (chosen, stock) => {
    const key = chosen.join();
    const lengthMm = needed.get(key) ?? neededMm(problem, chosen);
    needed.set(key, lengthMm);
    const roomMm = (problem.stocks[stock]?.lengthMm ?? 0) - trimMm - gripMm + (gripMm > 0 ? 0 : kerfMm);
    return lengthMm <= roomMm - slackMm + 1e-9;
  };
}

function neededMm(problem: StockProblem, chosen: readonly number[]): number {
  const pieces = chosen.flatMap((count, at) =>
    Array.from({ length: count }, () => problem.parts[at] as StockPart),
  );
  const alongMiddle = pieces.map(({ lengthMm, leanLeftRad, leanRightRad }) =>
    [leanLeftRad, leanRightRad].reduce(
      (sum, lean) =>
        sum - (problem.widthMm * Math.abs(Math.tan(lean))) / 2 + problem.kerfMm / (2 * Math.cos(lean)),
      lengthMm,
    ),
  );
  const place = (lean: number) =>
    Math.sign(lean) *
    ((problem.widthMm * Math.abs(Math.tan(lean))) / 2 +
      problem.kerfMm / (2 * Math.cos(lean)) -
      problem.kerfMm / 2);
  const faces = pieces.map(
    ({ leanLeftRad, leanRightRad }): Faces => [place(leanLeftRad), place(leanRightRad)],
  );
  return alongMiddle.reduce((sum, each) => sum + each, 0) + leastWay(faces, problem, 0);
}

/** Over every order and turning, what lies between the faces. */
function leastWay(faces: readonly Faces[], problem: StockProblem, at: number): number {
  if (faces.length === 0) return Math.abs(at);
  let least = Infinity;
  faces.forEach((each, k) => {
    // One of several alike is enough.
    if (faces.findIndex((other) => other[0] === each[0] && other[1] === each[1]) < k) return;
    const others = faces.filter((_, other) => other !== k);
    for (const [left, right] of ways(each, problem))
      least = Math.min(least, Math.abs(left - at) + leastWay(others, problem, right));
  });
  return least;
}

function ways([left, right]: Faces, { turning }: StockProblem): Faces[] {
  if (turning === 'none' || (left === 0 && right === 0)) return [[left, right]];
  const round: Faces[] = [
    [left, right],
    [right, left],
  ];
  return turning === 'round' ? round : [...round, [-left, -right], [-right, -left]];
}
