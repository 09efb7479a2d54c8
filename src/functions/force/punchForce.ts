import { refuse } from '../../core/inputError.js';
import { punchForceN } from '../../core/force/punch.js';
import { shearStrengthMPa } from '../../core/material/shearStrength.js';
import { setting } from '../../core/shop/setting.js';
import { cutPerimeterMm } from '../../core/tooling/cutPerimeter.js';
import { lengthArgument, optionalLengthArgument } from '../argument/length.js';
import { optionalCountArgument } from '../argument/number.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { gradeArgument, holeArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

export const punchForce = define({
  name: 'PUNCHFORCE',
  purpose: 'Force to punch a hole, or several in one hit',
  arguments: {
    hole: holeArgument(),
    thickness: lengthArgument(
      'thickness',
      'Thickness of the material: 3/8, 10 mm, or a number in the unit of the shop',
    ),
    grade: gradeArgument(),
    shop: shopOrUnitArgument,
    count: optionalCountArgument('How many holes in one hit', 99, '1'),
    punchShear: optionalLengthArgument('distance', 'Height of the shear ground on the punch', 'flat punch'),
  },
  result: 'force',
  gives: 'Force in US tons (inch shop) or kN (mm shop): cut perimeter × thickness × shear strength.',
  errors: '#VALUE! when the count stands both in the hole and in count and they differ.',
  source: 'Groover, Fundamentals of Modern Manufacturing; Kalpakjian & Schmid (from memory)',
  example: '=TONROW.PUNCHFORCE("13/16","3/8","A36")',
  compute({ hole, thickness, grade, shop, count, punchShear }, _context, working) {
    if (hole.count !== undefined && count !== undefined && hole.count !== count) {
      refuse(
        'Count',
        String(count),
        `the hole says ${hole.count} and count says ${count}.`,
        'Give the count once.',
      );
    }
    const shearRatio = setting(shop, 'shearRatio');
    return punchForceN(
      {
        cutPerimeterMm: cutPerimeterMm(hole.hole, working),
        thicknessMm: thickness,
        shearStrengthMPa: shearStrengthMPa({ grade, thicknessMm: thickness, shearRatio }, working),
        count: count ?? hole.count ?? 1,
        ...(punchShear === undefined ? {} : { punchShearMm: punchShear }),
      },
      working,
    );
  },
});
