import { refuse } from '../../core/inputError.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { proofWords, shortageWords, stockGap, stockPartWords } from '../../core/say/stockWords.js';
import type { StockPlan } from '../../core/stock/stockPlan.js';
import type { StockProblem } from '../../core/stock/stockProblem.js';
import { define } from '../descriptor/descriptor.js';
import { barsOf, planSteps } from './planSteps.js';
import { problemOf, stockArguments, stockSource } from './stockCall.js';

export const stockBars = define({
  name: 'STOCKBARS',
  purpose: 'How many bars to buy for a list of parts, at the least price or length',
  arguments: stockArguments,
  result: 'count',
  gives:
    'The number of bars of the plan that STOCKPLAN shows, with the proof there. Where the solver did not load and nothing is proven it is text: "48 bars without the solver, at most 2.1% above the least".',
  errors: '#VALUE! with the part, where some parts cannot be cut; otherwise as STOCKPLAN.',
  source: stockSource,
  example: '=TONROW.STOCKBARS({50,6;31.5,8},{240},"in","1/8")',
  isCancelable: true,
  async compute(call, { unit, plan }, working) {
    const { problem } = problemOf(call);
    const made = await plan(problem);
    refuseShort(made, problem, unit);
    const bars = barsOf(made);
    // Another program may have the solver and count fewer: a number would not tell.
    const isOpen = made.by === 'steps only' && stockGap(made) > 0;
    const shown = isOpen ? `${bars} bars without the solver, ${proofWords(made)}` : bars;
    planSteps(made, problem, working, shown);
    return shown;
  },
});

function refuseShort({ shortages }: StockPlan, { parts }: StockProblem, unit: LengthUnit): void {
  const [first] = shortages;
  const part = parts[first?.part ?? -1];
  if (!first || !part) return;
  const words = shortageWords(first, stockPartWords(part, unit));
  const others = shortages.length > 1 ? `, and ${shortages.length - 1} more` : '';
  refuse('Stock', '', `${words}${others}.`, 'Give longer bars, or more of them.');
}
