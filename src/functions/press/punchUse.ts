import { shearStrengthMPa } from '../../core/material/shearStrength.js';
import { punchFindings } from '../../core/press/punchStation.js';
import { stationUse } from '../../core/press/stationUse.js';
import { findPress } from '../../core/shop/findPress.js';
import { setting } from '../../core/shop/setting.js';
import { lengthArgument } from '../argument/length.js';
import { shopArgument } from '../argument/shop.js';
import { textArgument } from '../argument/text.js';
import { gradeArgument, holeArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

export const punchUse = define({
  name: 'PUNCHUSE',
  purpose: 'Share of a press rating that punching one hole takes; 1 is full',
  arguments: {
    press: textArgument('Name of the press', 'the name of a press of the shop'),
    hole: holeArgument(),
    thickness: lengthArgument('thickness', 'Thickness of the material'),
    grade: gradeArgument(),
    shop: shopArgument,
  },
  result: 'ratio',
  gives:
    'A share, 1 is the full rating; the verdict word where a size limit, a missing station or a blank limit stops it.',
  errors:
    '#N/A for a press that is not in the shop; #VALUE! with the reason for a press cell that cannot be read.',
  source: 'the plate of the press, as given; force: Groover (from memory)',
  example: '=TONROW.PUNCHUSE("Bay A","13/16","3/8","A36",ShopStamp)',
  compute({ press, hole, thickness, grade, shop }, _, working) {
    const job = {
      hole: hole.hole,
      thicknessMm: thickness,
      shearStrengthMPa: shearStrengthMPa(
        { grade, thicknessMm: thickness, shearRatio: setting(shop, 'shearRatio') },
        working,
      ),
      holeToThickness: setting(shop, 'holeToThickness'),
      punchAllowanceMPa: setting(shop, 'punchAllowanceMPa'),
      punchEntryMm: setting(shop, 'punchEntryMm'),
    };
    return stationUse(punchFindings(findPress(press, 'Press', shop), job, working), working);
  },
});
