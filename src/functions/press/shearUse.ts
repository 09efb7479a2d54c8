import { shearStrengthMPa } from '../../core/material/shearStrength.js';
import { bladeFindings } from '../../core/press/bladeLimit.js';
import { isCutBySaw, shearFindings } from '../../core/press/shearStation.js';
import { stationUse } from '../../core/press/stationUse.js';
import { leastThicknessMm } from '../../core/section/leastThickness.js';
import { findPress } from '../../core/shop/findPress.js';
import { setting } from '../../core/shop/setting.js';
import { optionalAngleArgument } from '../argument/number.js';
import { shopArgument } from '../argument/shop.js';
import { textArgument } from '../argument/text.js';
import { gradeArgument, sectionArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

export const shearUse = define({
  name: 'SHEARUSE',
  purpose: 'Share of a press rating that one cut through a section takes; 1 is full',
  arguments: {
    press: textArgument('Name of the press', 'the name of a press of the shop'),
    section: sectionArgument(),
    grade: gradeArgument(),
    shop: shopArgument,
    miter: optionalAngleArgument('Angle of the cut in degrees from square', 60),
  },
  result: 'ratio',
  gives:
    'A share of the size on the plate, 1 is full; the verdict word where a limit or a blank stops it; Off press for a section that is sawn.',
  errors:
    '#N/A for a press that is not in the shop; #VALUE! with the reason for a press cell that cannot be read.',
  source: 'the plate of the press, as given; common practice, no source',
  example: '=TONROW.SHEARUSE("Bay A","FB 1/2x4","A36",ShopStamp)',
  compute({ press, section, grade, shop, miter }, _, working) {
    const found = findPress(press, 'Press', shop);
    const cut = { grade, thicknessMm: leastThicknessMm(section) };
    const strength = { ...cut, shearRatio: setting(shop, 'shearRatio') };
    const job = { section, shearStrengthMPa: shearStrengthMPa(strength, working), miterRad: miter };
    const findings = shearFindings(found, job, working);
    const blades = isCutBySaw(section) ? [] : bladeFindings(found, cut, working);
    return stationUse([...findings, ...blades], working);
  },
});
