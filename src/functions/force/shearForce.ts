import { sectionCutForceN } from '../../core/force/sectionCut.js';
import { setting } from '../../core/shop/setting.js';
import { optionalAngleArgument } from '../argument/number.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { gradeArgument, sectionArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

export const shearForce = define({
  name: 'SHEARFORCE',
  purpose: 'Force of one clean cut through a section, without a dull-blade allowance',
  arguments: {
    section: sectionArgument(),
    grade: gradeArgument(),
    shop: shopOrUnitArgument,
    rake: optionalAngleArgument('Rake of the blade in degrees, for flat bars', 30),
    miter: optionalAngleArgument('Angle of the cut in degrees from square', 60),
  },
  result: 'force',
  gives:
    'Force in US tons (inch shop) or kN (mm shop). Flats by the raked blade, other sections by their area.',
  errors: '#VALUE! for a section that is not among those checked.',
  source:
    'Groover, Fundamentals of Modern Manufacturing (from memory); raked blade by integration over the cut',
  example: '=TONROW.SHEARFORCE("FB 1/2x4","A36","in",4)',
  compute({ section, grade, shop, rake, miter }, _context, working) {
    const shearRatio = setting(shop, 'shearRatio');
    return sectionCutForceN({ section, grade, shearRatio, rakeRad: rake, miterRad: miter }, working);
  },
});
