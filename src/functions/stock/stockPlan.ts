import { define } from '../descriptor/descriptor.js';
import { planRows } from './planRows.js';
import { planSteps } from './planSteps.js';
import { problemOf, stockArguments, stockSource } from './stockCall.js';

export const stockPlan = define({
  name: 'STOCKPLAN',
  purpose: 'Which bars to buy and what to cut from each: the least price or length, with a proof',
  arguments: stockArguments,
  result: 'cells',
  gives:
    'A heading row, then a row for each different bar: how many, length, pieces in their order, rest of one bar, price of these bars. Then a row for each part that cannot be cut. Last come the totals, with the proof that no plan buys less, or how far above the least it may be. Miters stand behind a piece: long point at the fence, below 0 where it is at the other edge.',
  errors:
    '#VALUE! for rows of several sections or grades in one range, bars of another section than the parts, and mitered parts without a section.',
  source: stockSource,
  example: '=TONROW.STOCKPLAN({50,6;31.5,8},{240},"in","1/8")',
  isCancelable: true,
  async compute(call, { unit, plan }, working) {
    const asked = problemOf(call);
    const made = await plan(asked.problem);
    planSteps(made, asked.problem, working);
    return planRows(made, asked, unit);
  },
});
