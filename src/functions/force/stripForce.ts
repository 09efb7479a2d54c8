import { punchForceN } from '../../core/force/punch.js';
import { strippingForceN } from '../../core/force/strip.js';
import { shearStrengthMPa } from '../../core/material/shearStrength.js';
import { setting } from '../../core/shop/setting.js';
import { cutPerimeterMm } from '../../core/tooling/cutPerimeter.js';
import { lengthArgument } from '../argument/length.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { gradeArgument, holeArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

export const stripForce = define({
  name: 'STRIPFORCE',
  purpose: 'Force to strip the work off the punch on the return stroke',
  arguments: {
    hole: holeArgument(),
    thickness: lengthArgument('thickness', 'Thickness of the material'),
    grade: gradeArgument(),
    shop: shopOrUnitArgument,
  },
  result: 'force',
  gives:
    'Force in US tons (inch shop) or kN (mm shop): the punching force × the setting Stripping share, else 0.15.',
  errors: '',
  source: 'common practice, no source: 10 to 20% of the punching force; that by Groover (from memory)',
  example: '=TONROW.STRIPFORCE("13/16","3/8","A36")',
  compute({ hole, thickness, grade, shop }, _context, working) {
    const shearRatio = setting(shop, 'shearRatio');
    const punchForce = punchForceN(
      {
        cutPerimeterMm: cutPerimeterMm(hole.hole, working),
        thicknessMm: thickness,
        shearStrengthMPa: shearStrengthMPa({ grade, thicknessMm: thickness, shearRatio }, working),
        count: hole.count ?? 1,
      },
      working,
    );
    return strippingForceN(
      { punchForceN: punchForce, strippingShare: setting(shop, 'strippingShare') },
      working,
    );
  },
});
