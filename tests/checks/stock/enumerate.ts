// The cheapest purchase of a small problem by complete enumeration: the least length of every choice of pieces, over
// every order and turning, then every choice of bars. It shares nothing with the planner but the model of the miters,
// and states that by the corners of the faces.
import type { StockPart, StockProblem, Turning } from '../../../src/core/stock/stockProblem.js';

export interface Given {
  problem: StockProblem;
  /** Pieces of each part that are to be cut. */
  pieces: readonly number[];
  /** What each mitered piece is given more than it needs. */
  slackMm: number;
  /** Whether what the model counts more than the cuts need is left out. */
  isByCutsAlone?: boolean;
}

type Faces = readonly [left: number, right: number];

/** Infinity where the bars do not suffice. */
export function cheapest(given: Given): number {
  const { stocks, trimMm, gripMm } = given.problem;
  const sets = everySet(given.pieces);
  const neededMm = leastLengths(given, sets);
  const least = new Float64Array(sets.length).fill(Infinity);
  least[0] = 0;
  const all = given.pieces.reduce((sum, count) => sum + count, 0);
  for (const { lengthMm, price, available } of stocks) {
    const roomMm = lengthMm - trimMm - gripMm + 1e-7;
    const fitting = sets.map((_, set) => set).filter((set) => (neededMm[set] as number) <= roomMm);
    const fills = fullest(sets, fitting);
    for (let bar = 0; bar < Math.min(available ?? all, all); bar++)
      if (!addBar(least, sets, fills, price ?? lengthMm)) break;
  }
  return least.at(-1) ?? Infinity;
}

/** One more bar of a stock, where it helps. */
function addBar(least: Float64Array, sets: readonly number[][], fills: number[][], cost: number): boolean {
  let isCheaper = false;
  for (let set = sets.length - 1; set > 0; set--)
    for (const fill of fills) {
      const rest = placeOf(
        sets,
        (sets[set] as number[]).map((count, part) => Math.max(0, count - (fill[part] as number))),
      );
      const other = (least[rest] as number) + cost;
      if (rest === set || other >= (least[set] as number)) continue;
      least[set] = other;
      isCheaper = true;
    }
  return isCheaper;
}

/** Every choice of pieces, as counts of each part: none first, all last, and each after those that it holds. */
function everySet(pieces: readonly number[]): number[][] {
  return pieces.reduce<number[][]>(
    (found, count) =>
      found.flatMap((each) => Array.from({ length: count + 1 }, (_, taken) => [...each, taken])),
    [[]],
  );
}

function placeOf(sets: readonly number[][], set: readonly number[]): number {
  const all = sets.at(-1) as number[];
  return set.reduce((place, count, part) => place * ((all[part] as number) + 1) + count, 0);
}

function changed(set: readonly number[], part: number, by: number): number[] {
  return set.map((count, at) => (at === part ? count + by : count));
}

/** Whoever wants less may throw the rest away. */
function fullest(sets: readonly number[][], fitting: readonly number[]): number[][] {
  const isFitting = new Set(fitting);
  return fitting
    .map((place) => sets[place] as number[])
    .filter((set) =>
      set.every((count, part) => {
        if (count === sets.at(-1)?.[part]) return true;
        return !isFitting.has(placeOf(sets, changed(set, part, 1)));
      }),
    );
}

/** From the trim to the grip or the end of the bar, by choice: the last piece is each of them, turned each way. */
function leastLengths({ problem, slackMm, isByCutsAlone }: Given, sets: readonly number[][]): number[] {
  const gap = gaps(problem, isByCutsAlone ? 0 : 1);
  const turned = problem.parts.map(({ leanLeftRad, leanRightRad }) =>
    ways([leanLeftRad, leanRightRad], problem.turning),
  );
  const middles = problem.parts.map(
    (part) => middleMm(part, problem.widthMm) + (isMitered(part) ? slackMm : 0),
  );
  /** By choice: the least length to each last face. */
  const known = sets.map(() => new Map<number, number>());
  return sets.map((set, place) => {
    const own = known[place] as Map<number, number>;
    set.forEach((count, part) => {
      if (count === 0) return;
      const before = known[placeOf(sets, changed(set, part, -1))] as Map<number, number>;
      for (const [left, right] of turned[part] as Faces[]) {
        const starts = [...before].map(([face, lengthMm]) => lengthMm + gap.between(face, left));
        const startMm = before.size === 0 ? gap.front(left) : Math.min(...starts);
        const lengthMm = startMm + (middles[part] as number);
        own.set(right, Math.min(own.get(right) ?? Infinity, lengthMm));
      }
    });
    return own.size === 0 ? 0 : Math.min(...[...own].map(([face, lengthMm]) => lengthMm + gap.back(face)));
  });
}

/** Along the middle of the width. */
function middleMm({ lengthMm, leanLeftRad, leanRightRad }: StockPart, widthMm: number): number {
  return lengthMm - (widthMm / 2) * (Math.tan(Math.abs(leanLeftRad)) + Math.tan(Math.abs(leanRightRad)));
}

/** What lies between faces, and between a face and the ends of a bar, along the middle of the width. */
function gaps({ widthMm, kerfMm, gripMm }: StockProblem, modeled: number) {
  const cutMm = (lean: number) => kerfMm / Math.cos(lean);
  const overhangMm = (lean: number) => (widthMm / 2) * Math.tan(Math.abs(lean));
  const beyondMm = (lean: number) => modeled * (cutMm(lean) - kerfMm);
  return {
    front: (lean: number) => overhangMm(lean) + beyondMm(lean),
    back: (lean: number) => overhangMm(lean) + (gripMm > 0 ? cutMm(lean) : beyondMm(lean)),
    /** The nearer corners are apart by the longer of both cuts. */
    between(one: number, other: number) {
      const [less = 0, more = 0] = [one, other].sort((a, b) => Math.abs(a) - Math.abs(b));
      const isOpposite = less * more < 0;
      const apartMm = (widthMm / 2) * Math.abs(Math.tan(one) - Math.tan(other));
      return apartMm + cutMm(more) + (isOpposite ? beyondMm(less) : 0);
    },
  };
}

export function isMitered({ leanLeftRad, leanRightRad }: StockPart): boolean {
  return leanLeftRad !== 0 || leanRightRad !== 0;
}

function ways([left, right]: Faces, turning: Turning): Faces[] {
  if (turning === 'none' || (left === 0 && right === 0)) return [[left, right]];
  const round: Faces[] = [
    [left, right],
    [right, left],
  ];
  return turning === 'round' ? round : [...round, [-left, -right], [-right, -left]];
}
