import type { CellValue } from '../../core/quantity/cellValue.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { listWords } from '../../core/say/listWords.js';
import {
  miterCountWords,
  proofWords,
  shortageWords,
  stockGap,
  stockPartWords,
} from '../../core/say/stockWords.js';
import type { PlannedBar, StockPlan } from '../../core/stock/stockPlan.js';
import type { StockPart } from '../../core/stock/stockProblem.js';
import { type AskedProblem, shownLength } from './stockCall.js';

const planHeadings = ['Bars', 'Length', 'Pieces', 'Rest', 'Price'];

/** A plan as cells: a line for each different bar, then what cannot be cut, then the totals and how good the plan is. */
export function planRows(plan: StockPlan, asked: AskedProblem, unit: LengthUnit): CellValue[][] {
  const { parts, stocks } = asked.problem;
  const isPriced = stocks.some(({ price }) => price !== undefined);
  const bars = plan.bars.map((bar): CellValue[] => {
    const { lengthMm = 0, price = 0 } = stocks[bar.stock] ?? {};
    const pieces = piecesWords(bar, parts, unit);
    const cost = isPriced ? price * bar.bars : '';
    return [bar.bars, shownLength(lengthMm, unit), pieces, shownLength(bar.restMm, unit), cost];
  });
  const short = plan.shortages.map((shortage): CellValue[] => {
    const part = parts[shortage.part];
    return ['', '', part ? shortageWords(shortage, stockPartWords(part, unit)) : '', '', ''];
  });
  const sum = (of: (bar: PlannedBar) => number) =>
    plan.bars.reduce((total, bar) => total + bar.bars * of(bar), 0);
  const total: CellValue[] = [
    sum(() => 1),
    shownLength(
      sum(({ stock }) => stocks[stock]?.lengthMm ?? 0),
      unit,
    ),
    totalWords(plan, asked),
    shownLength(
      sum(({ restMm }) => restMm),
      unit,
    ),
    isPriced ? plan.purchase : '',
  ];
  return [planHeadings, ...bars, ...short, total];
}

/** The pieces of a bar in the order in which they lie in it, equal neighbors together. */
function piecesWords({ pieces }: PlannedBar, parts: readonly StockPart[], unit: LengthUnit): string {
  const runs: { words: string; count: number }[] = [];
  for (const { part } of pieces) {
    const given = parts[part];
    const words = given ? stockPartWords(given, unit) : '';
    const last = runs.at(-1);
    if (last?.words === words) last.count += 1;
    else runs.push({ words, count: 1 });
  }
  return runs.map(({ words, count }) => `${count} × ${words}`).join(' + ');
}

/** `Total, proven: no plan buys less.`, and what the plan was made without. */
function totalWords(plan: StockPlan, { problem, notGiven }: AskedProblem): string {
  const sentences = [`Total, ${proofWords(plan)}.`];
  if (plan.shortages.length > 0) sentences.push('Some parts are not cut.');
  if (plan.isStopped) sentences.push('Stopped before the end.');
  // What the steps prove they would have planned with the solver, too.
  if (plan.by === 'steps only' && stockGap(plan) > 0)
    sentences.push('Planned by steps only: the solver did not load.');
  const isMitered = problem.parts.some((part) => part.leanLeftRad !== 0 || part.leanRightRad !== 0);
  if (isMitered && problem.kerfMm > 0) sentences.push(miterCountWords);
  if (notGiven.length > 0) sentences.push(`No ${listWords(notGiven)} given: 0 taken.`);
  return sentences.join(' ');
}
