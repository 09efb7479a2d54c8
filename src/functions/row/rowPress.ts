import { refuse } from '../../core/inputError.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { rowItemQuantity } from '../../core/say/rowItemQuantity.js';
import { governs } from '../../core/say/say.js';
import { workItemQuantity } from '../../core/say/workItemQuantity.js';
import { type OnOnePress, onEachPress } from '../../core/work/onEachPress.js';
import { shopArgument } from '../argument/shop.js';
import { rangeArgument } from '../argument/text.js';
import { define } from '../descriptor/descriptor.js';
import { oneRow } from './oneRow.js';
import { shownQuantity } from './shownItem.js';

const titles = ['Press', 'Verdict', 'Share of rating', 'Governs', 'Minutes', 'Cost'];

export const rowPress = define({
  name: 'ROWPRESS',
  purpose: 'What every press of the shop would make of a row of a parts list',
  arguments: {
    headings: rangeArgument('The row of headings: Mark, Qty, Section, Grade, Length, Hole …'),
    row: rangeArgument('The row of the part, the same columns'),
    shop: shopArgument,
  },
  result: 'cells',
  gives:
    'A heading row, then a row for each press: verdict, share of rating, what governs, minutes and cost of the row; blank where there is none.',
  errors:
    '#VALUE! when the headings have no Section column or do not fit the row, and for a blank row or a shop without presses.',
  source: 'each check names its own; time and cost: common practice, no source',
  example: '=TONROW.ROWPRESS({"Mark","Section","Grade","Length"},{"C1","FB 3/8x4","A36",6},ShopStamp)',
  compute({ headings, row, shop }, { unit }, working) {
    const { names, cells } = oneRow(headings, row);
    const presses = onEachPress(cells, names, shop);
    if (presses.length === 0) {
      const problem = shop.presses.length === 0 ? 'the shop has no press.' : 'the row is blank.';
      return refuse('Row', '', problem, 'Give a row of a part and a shop with a press.');
    }
    const rows = presses.map(({ press, result, work }: OnOnePress): CellValue[] => {
      const use = shownQuantity(rowItemQuantity(result, 'use', unit), unit);
      const why = result.deciding ? governs(result.deciding, unit) : '';
      const [minutes, cost] = (['minutes', 'cost'] as const).map((item) =>
        shownQuantity(workItemQuantity(work, item), unit),
      );
      return [press, result.verdict, use, why, minutes ?? '', cost ?? ''];
    });
    for (const { press, result } of presses) {
      working?.step({
        title: `Checked on ${press}`,
        formula: 'the worst of all checks',
        values: [{ symbol: 'verdict', meaning: 'one word for the row', kind: 'text', value: result.verdict }],
        result: { symbol: 'press', meaning: 'press', kind: 'text', value: press },
        source: 'the checks of ROWCHECK',
      });
    }
    return [titles, ...rows];
  },
});
