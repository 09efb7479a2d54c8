import { bendForceN } from '../../core/force/bend.js';
import { upperTensileMPa } from '../../core/material/upperTensile.js';
import { setting } from '../../core/shop/setting.js';
import { bendLimits } from '../../core/tooling/bendLimits.js';
import { veeOpeningMm } from '../../core/tooling/veeOpening.js';
import { lengthArgument, optionalLengthArgument } from '../argument/length.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { gradeArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

export const bendForce = define({
  name: 'BENDFORCE',
  purpose: 'Force of an air bend in a V die',
  arguments: {
    length: lengthArgument('width', 'Length of the bend'),
    thickness: lengthArgument('thickness', 'Thickness of the material'),
    grade: gradeArgument(),
    shop: shopOrUnitArgument,
    vee: optionalLengthArgument(
      'distance',
      'Opening of the V die',
      'the setting V opening ratio × thickness, else 10 × thickness',
    ),
  },
  result: 'force',
  gives:
    'Force in US tons (inch shop) or kN (mm shop): 1.33 · Rm · L · t² / V. The working shows radius and least flange.',
  errors: '#VALUE! for a grade without an upper tensile strength, and a V no wider than the thickness.',
  source:
    'Groover, Fundamentals of Modern Manufacturing (from memory); limits: ASTM A6 Table X4.2, common practice',
  example: '=TONROW.BENDFORCE(12,"1/4","A36")',
  compute({ length, thickness, grade, shop, vee }, _context, working) {
    const tensileMPa = upperTensileMPa({ grade, thicknessMm: thickness }, working);
    const ratio = setting(shop, 'veeRatio');
    const veeMm = vee ?? veeOpeningMm({ thicknessMm: thickness, veeRatio: ratio }, working);
    bendLimits({ grade, thicknessMm: thickness, veeMm }, working);
    return bendForceN({ tensileMPa, lengthMm: length, thicknessMm: thickness, veeMm }, working);
  },
});
