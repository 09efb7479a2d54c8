import { shearStrengthMPa } from '../../core/material/shearStrength.js';
import { notchFindings } from '../../core/press/notchStation.js';
import { stationUse } from '../../core/press/stationUse.js';
import { findPress } from '../../core/shop/findPress.js';
import { setting } from '../../core/shop/setting.js';
import { lengthArgument } from '../argument/length.js';
import { shopArgument } from '../argument/shop.js';
import { textArgument } from '../argument/text.js';
import { gradeArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

export const notchUse = define({
  name: 'NOTCHUSE',
  purpose: 'Share of a press rating that a notch in an edge takes; 1 is full',
  arguments: {
    press: textArgument('Name of the press', 'the name of a press of the shop'),
    width: lengthArgument('width', 'Width of the notch, along the edge'),
    depth: lengthArgument('width', 'Depth of the notch, from the edge'),
    thickness: lengthArgument('thickness', 'Thickness of the material'),
    grade: gradeArgument(),
    shop: shopArgument,
  },
  result: 'ratio',
  gives:
    "A share of the plate's own notch, 1 is full, for the worst bite; the verdict word where a limit or a blank stops it.",
  errors:
    '#N/A for a press that is not in the shop; #VALUE! with the reason for a press cell that cannot be read.',
  source: 'the plate of the press, as given; common practice, no source',
  example: '=TONROW.NOTCHUSE("Bay A",2,2,"1/4","A36",ShopStamp)',
  compute({ press, width, depth, thickness, grade, shop }, _, working) {
    const found = findPress(press, 'Press', shop);
    const shearRatio = setting(shop, 'shearRatio');
    const job = {
      widthMm: width,
      depthMm: depth,
      where: 'edge',
      thicknessMm: thickness,
      shearStrengthMPa: shearStrengthMPa({ grade, thicknessMm: thickness, shearRatio }, working),
    } as const;
    return stationUse(notchFindings(found, job, working), working);
  },
});
