import { shearStrengthMPa } from '../../core/material/shearStrength.js';
import { setting } from '../../core/shop/setting.js';
import { leastHoleMm } from '../../core/tooling/leastHole.js';
import { lengthArgument } from '../argument/length.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { gradeArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

export const holeMin = define({
  name: 'HOLEMIN',
  purpose: 'Smallest hole a punch survives in a thickness and grade',
  arguments: {
    thickness: lengthArgument('thickness', 'Thickness of the material'),
    grade: gradeArgument(),
    shop: shopOrUnitArgument,
  },
  result: 'length',
  gives: 'Smallest diameter, slot width or side, in or mm: the larger of ratio × thickness and 4 τ t / σp.',
  errors: '',
  source: 'common practice, no source',
  example: '=TONROW.HOLEMIN("1/2","A36")',
  compute({ thickness, grade, shop }, _context, working) {
    const shearRatio = setting(shop, 'shearRatio');
    const input = {
      thicknessMm: thickness,
      shearStrengthMPa: shearStrengthMPa({ grade, thicknessMm: thickness, shearRatio }, working),
      holeToThickness: setting(shop, 'holeToThickness'),
      punchAllowanceMPa: setting(shop, 'punchAllowanceMPa'),
    };
    return leastHoleMm(input, working);
  },
});
