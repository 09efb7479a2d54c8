import { greatestClearance } from '../../core/shop/greatestClearance.js';
import { setting } from '../../core/shop/setting.js';
import { totalDieClearanceMm } from '../../core/tooling/dieClearance.js';
import { dieOpening as openingOf } from '../../core/tooling/dieOpening.js';
import { lengthArgument } from '../argument/length.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { gradeArgument, holeArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';
import { inShopUnit } from '../../core/quantity/shopUnit.js';
import { clearanceMethodArgument } from './dieClearance.js';

export const dieOpening = define({
  name: 'DIEOPENING',
  purpose: 'Opening of the die for a hole: the size of the hole with the total clearance',
  arguments: {
    hole: holeArgument(),
    thickness: lengthArgument('thickness', 'Thickness of the material'),
    grade: gradeArgument(),
    shop: shopOrUnitArgument,
    method: clearanceMethodArgument,
  },
  result: 'cells',
  gives:
    'Diameter, side or width across flats, in or mm; width and length side by side for a slot or rectangle.',
  errors: '',
  source: 'clearance by plate: common practice, no source; by sheet: Groover, allowance table (from memory)',
  example: '=TONROW.DIEOPENING("13/16","3/8","A36")',
  compute({ hole, thickness, grade, shop, method }, { unit }, working) {
    const clearance = {
      thicknessMm: thickness,
      grade,
      method: method ?? setting(shop, 'clearanceMethod'),
      ...greatestClearance(shop),
    };
    const totalClearanceMm = totalDieClearanceMm(clearance, working);
    const { widthMm, lengthMm } = openingOf({ hole: hole.hole, totalClearanceMm }, working);
    const sizes = lengthMm === undefined ? [widthMm] : [widthMm, lengthMm];
    return [sizes.map((mm) => inShopUnit(mm, 'length', unit))];
  },
});
