import type { PlannedBar, PlannedPiece, StockPlan } from './stockPlan.js';
import type { StockPart, StockProblem } from './stockProblem.js';

const toleranceMm = 1e-5;
/** Of money and of sums of lengths. */
const relative = 1e-9;

/**
 * Checks a plan against its problem, by the corners of its pieces: nothing is cut twice, cut into, forgotten or bought
 * beyond what can be had, and the numbers are those of the bars.
 *
 * It shares no arithmetic with the planner: each piece has four corners, near and far from the fence; between the
 * facing corners of neighbors lies what either cut takes along the bar, k / cos θ.
 * @param problem as it was given; lengths in mm, angles in rad
 * @param plan the plan to check
 * @returns nothing
 * Valid for every plan.
 * Throws Error that says what is wrong: a plan that fails is a fault of the planner, never of the input.
 * @example verifyPlan(problem, planStock(problem))
 * Source: plane geometry.
 */
export function verifyPlan(problem: StockProblem, plan: StockPlan): void {
  for (const bar of plan.bars) verifyBar(problem, bar);
  verifyPieces(problem, plan);
  problem.stocks.forEach(({ available }, at) => {
    const used = sum(plan.bars.filter((bar) => bar.stock === at).map((bar) => bar.bars));
    claim(used <= (available ?? Infinity), `stock ${String(at)} is used ${String(used)} times`);
  });
  const purchase = sum(
    plan.bars.map(({ stock, bars }) => {
      const length = problem.stocks[stock];
      return bars * (length?.price ?? length?.lengthMm ?? NaN);
    }),
  );
  const slack = relative * Math.max(1, purchase);
  claim(Math.abs(plan.purchase - purchase) <= slack, `the purchase is ${String(purchase)}`);
  claim(plan.bound <= purchase + slack, `the bound ${String(plan.bound)} is above the purchase`);
  if (plan.proof !== undefined)
    claim(plan.bound >= purchase - slack, `the bound ${String(plan.bound)} proves nothing`);
}

function verifyPieces(problem: StockProblem, plan: StockPlan): void {
  const cut = problem.parts.map(() => 0);
  for (const { bars, pieces } of plan.bars)
    for (const { part } of pieces) cut[part] = (cut[part] ?? NaN) + bars;
  for (const { part, pieces, why } of plan.shortages) {
    const given = problem.parts[part];
    claim(given !== undefined, `part ${String(part)} is unknown`);
    claim(Number.isInteger(pieces) && pieces > 0, `${String(pieces)} pieces are short`);
    cut[part] = (cut[part] ?? NaN) + pieces;
    if (why === 'too long') claim(isTooLong(problem, given), `part ${String(part)} fits a bar`);
    else claim(plan.proof === undefined, 'it is proven, and pieces are short');
  }
  problem.parts.forEach(({ pieces }, at) => {
    claim(cut[at] === pieces, `part ${String(at)}: ${String(cut[at])} of ${String(pieces)} pieces`);
  });
}

function verifyBar(problem: StockProblem, bar: PlannedBar): void {
  const { kerfMm, trimMm, gripMm, keepMm } = problem;
  const lengthMm = problem.stocks[bar.stock]?.lengthMm ?? NaN;
  claim(Number.isInteger(bar.bars) && bar.bars > 0 && bar.pieces.length > 0, 'a bar without pieces');
  let behind = [trimMm, trimMm];
  let lastCutMm = 0;
  for (const piece of bar.pieces) {
    verifyTurn(problem, piece);
    const { left, right } = corners(problem, piece);
    const cutMm = kerfMm / Math.cos(piece.leanLeftRad);
    left.forEach((mm, side) => {
      const leastMm = (behind[side] as number) + (lastCutMm === 0 ? 0 : Math.max(cutMm, lastCutMm));
      claim(mm >= leastMm - toleranceMm, `a piece at ${String(mm)} mm starts before ${String(leastMm)} mm`);
      claim((right[side] as number) >= mm - toleranceMm, 'a piece is cut through');
    });
    behind = right;
    lastCutMm = kerfMm / Math.cos(piece.leanRightRad);
  }
  const endMm = Math.max(...behind);
  const leastRestMm = gripMm > 0 ? gripMm + lastCutMm : 0;
  claim(endMm <= lengthMm - leastRestMm + toleranceMm, `the last piece ends at ${String(endMm)} mm`);
  const restMm = Math.max(0, lengthMm - endMm - lastCutMm);
  claim(Math.abs(restMm - bar.restMm) <= toleranceMm, `the rest is ${String(restMm)} mm`);
  const isKept = bar.restMm > 0 && bar.restMm >= keepMm;
  const isOnEdge = Math.abs(bar.restMm - keepMm) <= toleranceMm || bar.restMm <= toleranceMm;
  claim(bar.isKept === isKept || isOnEdge, `a rest of ${String(restMm)} mm is kept or not`);
}

/** Near and far from the fence. */
function corners({ widthMm }: StockProblem, piece: PlannedPiece): { left: number[]; right: number[] } {
  const left = widthMm * Math.tan(piece.leanLeftRad);
  const right = widthMm * Math.tan(piece.leanRightRad);
  return {
    left: [piece.startMm + Math.max(0, -left), piece.startMm + Math.max(0, left)],
    right: [piece.endMm - Math.max(0, right), piece.endMm - Math.max(0, -right)],
  };
}

function verifyTurn({ parts, turning }: StockProblem, piece: PlannedPiece): void {
  const part = parts[piece.part];
  const isAllowed =
    turning === 'over and round' || (!piece.isTurnedOver && (turning === 'round' || !piece.isTurnedRound));
  claim(isAllowed, `part ${String(piece.part)} is turned`);
  const lengthMm = piece.endMm - piece.startMm;
  claim(
    Math.abs(lengthMm - (part?.lengthMm ?? NaN)) <= toleranceMm,
    `a piece is ${String(lengthMm)} mm long`,
  );
  const sign = piece.isTurnedOver ? -1 : 1;
  const first = piece.isTurnedRound ? part?.leanRightRad : part?.leanLeftRad;
  const last = piece.isTurnedRound ? part?.leanLeftRad : part?.leanRightRad;
  const isSame = piece.leanLeftRad === sign * (first ?? NaN) && piece.leanRightRad === sign * (last ?? NaN);
  claim(isSame, `part ${String(piece.part)} leans otherwise`);
}

/** Whether no bar holds a part, with what the model counts beyond what the cuts need. */
function isTooLong({ stocks, kerfMm, trimMm, gripMm }: StockProblem, part: StockPart): boolean {
  const beyondMm = [part.leanLeftRad, part.leanRightRad].map((lean) => kerfMm / Math.cos(lean) - kerfMm);
  const neededMm = part.lengthMm + trimMm + gripMm + (gripMm > 0 ? kerfMm : 0) + sum(beyondMm) + 0.01;
  return stocks.every(({ lengthMm, available }) => available === 0 || lengthMm < neededMm);
}

function claim(holds: boolean, otherwise: string): asserts holds {
  if (!holds) throw new Error(`The stock plan is wrong: ${otherwise}.`);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
