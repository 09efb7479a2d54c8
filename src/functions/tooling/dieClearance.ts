import { setting } from '../../core/shop/setting.js';
import { greatestClearance } from '../../core/shop/greatestClearance.js';
import { totalDieClearanceMm } from '../../core/tooling/dieClearance.js';
import { optionalChoiceArgument } from '../argument/choice.js';
import { lengthArgument } from '../argument/length.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { gradeArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

/** How the total clearance is chosen. */
export const clearanceMethodArgument = optionalChoiceArgument(
  'How the clearance is chosen; the setting of the shop when left out',
  [
    { value: 'plate', meaning: 'by steps of thickness, plate and structural practice' },
    { value: 'sheet', meaning: 'by the allowance of the material, sheet metal practice' },
  ],
  'the setting of the shop, else plate',
);

export const dieClearance = define({
  name: 'DIECLEARANCE',
  purpose: 'Total die clearance: die opening less punch size, both sides together',
  arguments: {
    thickness: lengthArgument('thickness', 'Thickness of the material'),
    grade: gradeArgument(),
    shop: shopOrUnitArgument,
    method: clearanceMethodArgument,
  },
  result: 'length',
  gives: 'Total clearance, in or mm.',
  errors: '',
  source: 'plate: common practice, no source; sheet: Groover, allowance table (from memory)',
  example: '=TONROW.DIECLEARANCE("3/8","A36")',
  compute({ thickness, grade, shop, method }, _context, working) {
    const chosen = method ?? setting(shop, 'clearanceMethod');
    return totalDieClearanceMm(
      { thicknessMm: thickness, grade, method: chosen, ...greatestClearance(shop) },
      working,
    );
  },
});
