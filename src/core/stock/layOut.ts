import type { Cutting, Packing, Pattern } from './cutting.js';
import { barWalk } from './barWalk.js';
import { placeOfFace } from './wholeUnits.js';
import type { PlannedBar, PlannedPiece, Shortage } from './stockPlan.js';
import type { StockPart, StockProblem, Turning } from './stockProblem.js';

const toleranceMm = 1e-6;

interface Turn {
  isTurnedOver: boolean;
  isTurnedRound: boolean;
}

const turns: Record<Turning, readonly Turn[]> = {
  none: [{ isTurnedOver: false, isTurnedRound: false }],
  round: [
    { isTurnedOver: false, isTurnedRound: false },
    { isTurnedOver: false, isTurnedRound: true },
  ],
  'over and round': [
    { isTurnedOver: false, isTurnedRound: false },
    { isTurnedOver: true, isTurnedRound: false },
    { isTurnedOver: false, isTurnedRound: true },
    { isTurnedOver: true, isTurnedRound: true },
  ],
};

/**
 * The bars of a plan with each piece in its place, in the order that loses the least, and the pieces that found no bar.
 *
 * A face stands in the middle of the width. From the square end at the trim to the first face, and from face to face,
 * goes the way between their places and half of what each of their cuts takes: see the model of the miters.
 * @param problem as it was given; lengths in mm, angles in rad
 * @param cutting the same in whole units
 * @param packing the plan in whole units
 * @param whyShort why pieces are left out
 * @returns bars by stock and rising rest, those cut alike as one
 * Valid for every plan. Throws nothing.
 * @example layOut(problem, cutting, packing, 'none found').bars[0].restMm
 * Source: plane geometry.
 */
export function layOut(
  problem: StockProblem,
  cutting: Cutting,
  packing: Packing,
  whyShort: Shortage['why'],
): { bars: PlannedBar[]; shortages: Shortage[] } {
  const supply = cutting.items.map((item) => item.parts.map((each) => ({ ...each })));
  const bars = new Map<string, PlannedBar>();
  for (const { pattern, bars: times } of packing.runs) {
    const steps = barWalk(cutting, pattern);
    for (let bar = 0; bar < times; bar++) {
      const parts = steps.map(({ item }) => takeOne(supply[item] ?? []));
      const key = `${String(pattern.stock)}:${parts.join()}`;
      const same = bars.get(key);
      if (same) bars.set(key, { ...same, bars: same.bars + 1 });
      else bars.set(key, { ...layOutBar(problem, cutting, pattern, steps, parts), bars: 1 });
    }
  }
  const shortages = supply
    .flat()
    .filter(({ pieces }) => pieces > 0)
    .map((each) => ({ ...each, why: whyShort }));
  return { bars: [...bars.values()].sort((a, b) => a.stock - b.stock || a.restMm - b.restMm), shortages };
}

function takeOne(supply: { part: number; pieces: number }[]): number {
  const next = supply.find(({ pieces }) => pieces > 0);
  if (!next) throw new RangeError('more pieces are planned than wanted');
  next.pieces--;
  return next.part;
}

function layOutBar(
  problem: StockProblem,
  cutting: Cutting,
  pattern: Pattern,
  steps: readonly { item: number; isReversed: boolean }[],
  parts: readonly number[],
): Omit<PlannedBar, 'bars'> {
  const { widthMm, kerfMm, trimMm } = problem;
  const halfCut = (leanRad: number) => kerfMm / (2 * Math.cos(leanRad));
  const overhang = (leanRad: number) => (widthMm / 2) * Math.abs(Math.tan(leanRad));
  let middleMm = trimMm - kerfMm / 2;
  let place = 0;
  let lastMm = trimMm;
  const pieces = steps.map(({ item, isReversed }, at): PlannedPiece => {
    const part = problem.parts[parts[at] as number] as StockPart;
    const { left = 0, right = 0 } = cutting.items[item] ?? {};
    const turned = turnedFor(
      problem,
      part,
      isReversed ? right : left,
      isReversed ? left : right,
      place,
      cutting,
    );
    const { leanLeftRad, leanRightRad } = turned;
    const leftMm =
      middleMm + Math.abs(placeOfFace(leanLeftRad, widthMm, kerfMm) - place) + halfCut(leanLeftRad);
    const startMm = leftMm - overhang(leanLeftRad);
    const endMm = startMm + part.lengthMm;
    place = placeOfFace(leanRightRad, widthMm, kerfMm);
    middleMm = endMm - overhang(leanRightRad) + halfCut(leanRightRad);
    lastMm = endMm + 2 * halfCut(leanRightRad);
    return { part: parts[at] as number, startMm, endMm, ...turned };
  });
  const restMm = Math.max(0, (problem.stocks[pattern.stock]?.lengthMm ?? 0) - lastMm);
  const isKept = restMm > toleranceMm && restMm >= problem.keepMm - toleranceMm;
  return { stock: pattern.stock, pieces, restMm, isKept };
}

type Turned = Turn & Pick<PlannedPiece, 'leanLeftRad' | 'leanRightRad'>;

/** The part turned so that its faces stand where the walk wants them, as near to the last face as can be. */
function turnedFor(
  problem: StockProblem,
  part: StockPart,
  left: number,
  right: number,
  lastPlace: number,
  cutting: Cutting,
): Turned {
  const { widthMm, kerfMm, turning } = problem;
  const places = (each: Turned) => [each.leanLeftRad, each.leanRightRad].map((lean) => cutting.placeOf(lean));
  const fitting = turns[turning]
    .map((turn) => turnPart(part, turn))
    .filter((each) => places(each)[0] === left && places(each)[1] === right);
  const way = (each: Turned) => Math.abs(placeOfFace(each.leanLeftRad, widthMm, kerfMm) - lastPlace);
  const best = fitting.reduce<Turned | undefined>(
    (kept, each) => (kept && way(kept) <= way(each) + toleranceMm ? kept : each),
    undefined,
  );
  if (!best) throw new RangeError('a part does not turn as its item does');
  return best;
}

function turnPart(part: StockPart, turn: Turn): Turned {
  const [left, right] = turn.isTurnedRound
    ? [part.leanRightRad, part.leanLeftRad]
    : [part.leanLeftRad, part.leanRightRad];
  const sign = turn.isTurnedOver ? -1 : 1;
  // `+ 0` because a square face has no sign.
  return { ...turn, leanLeftRad: sign * left + 0, leanRightRad: sign * right + 0 };
}
