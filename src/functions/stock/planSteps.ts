import { proofWords, stockGap } from '../../core/say/stockWords.js';
import type { StockPlan } from '../../core/stock/stockPlan.js';
import type { StockProblem } from '../../core/stock/stockProblem.js';
import { lengthValue, ratioValue, textValue } from '../../core/working/namedValue.js';
import type { NamedValue, Working } from '../../core/working/working.js';
import { stockSource } from './stockCall.js';

const count = (symbol: string, meaning: string, value: number): NamedValue => ({
  symbol,
  meaning,
  kind: 'count',
  value,
});

/** How many bars a plan buys. */
export function barsOf({ bars }: StockPlan): number {
  return bars.reduce((sum, { bars: alike }) => sum + alike, 0);
}

/** What a plan was made from, what it buys, and how it is known that none buys less. Ends in the number of bars as it is shown. */
export function planSteps(
  plan: StockPlan,
  problem: StockProblem,
  working: Working | undefined,
  shown: number | string = barsOf(plan),
): void {
  if (!working) return;
  const { parts, stocks, kerfMm, trimMm, gripMm } = problem;
  const isPriced = stocks.some(({ price }) => price !== undefined);
  const bought = (symbol: string, meaning: string, value: number): NamedValue =>
    isPriced ? { symbol, meaning, kind: 'money', value } : lengthValue(symbol, meaning, value);
  working.step({
    title: 'Length of the parts',
    formula: 'L = Σ n · l',
    values: [
      count('parts', 'different parts', parts.length),
      count(
        'n',
        'pieces',
        parts.reduce((sum, { pieces }) => sum + pieces, 0),
      ),
      lengthValue('k', 'kerf of a cut', kerfMm),
      lengthValue('t', 'trim of a bar', trimMm),
      lengthValue('g', 'grip of a bar', gripMm),
    ],
    result: lengthValue(
      'L',
      'length of all pieces, between their farthest points',
      parts.reduce((sum, { pieces, lengthMm }) => sum + pieces * lengthMm, 0),
    ),
    source: 'counted',
  });
  working.step({
    title: isPriced ? 'Price of the plan' : 'Length of the plan',
    formula: isPriced ? 'P = Σ bars · price' : 'P = Σ bars · length',
    values: [count('patterns', 'bars that are cut differently', plan.bars.length)],
    result: bought('P', isPriced ? 'price of all bars' : 'length of all bars', plan.purchase),
    source: stockSource,
  });
  working.step({
    title: 'Bound',
    formula: 'B ≤ P of every plan',
    values: [textValue('by', 'how it was planned', plan.by === 'solver' ? 'steps and solver' : plan.by)],
    result: bought('B', 'no plan buys for less', plan.bound),
    source: stockSource,
  });
  const gap = stockGap(plan);
  working.step({
    title: 'Proof',
    formula: proofFormula(plan),
    values: Number.isFinite(gap)
      ? [ratioValue('gap', 'share that the plan may be above the least', gap)]
      : [],
    result: textValue('proof', 'what is known', proofWords(plan)),
    source: stockSource,
  });
  working.step({
    title: 'Bars',
    formula: 'N = Σ bars',
    values: [],
    result:
      typeof shown === 'number' ? count('N', 'bars to buy', shown) : textValue('N', 'bars to buy', shown),
    source: 'counted',
    ...(plan.shortages.length > 0 ? { cautions: ['Some parts are not cut.'] } : {}),
  });
}

function proofFormula({ proof }: StockPlan): string {
  if (proof === 'by bound') return 'no plan can cost between B and P';
  if (proof === 'by patterns') return 'every pattern that a cheaper plan could hold was tried';
  return 'gap = P / B − 1';
}
