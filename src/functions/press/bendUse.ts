import { upperTensileMPa } from '../../core/material/upperTensile.js';
import { bendFindings } from '../../core/press/bendStation.js';
import { stationUse } from '../../core/press/stationUse.js';
import { findPress } from '../../core/shop/findPress.js';
import { setting } from '../../core/shop/setting.js';
import { lengthArgument, optionalLengthArgument } from '../argument/length.js';
import { shopArgument } from '../argument/shop.js';
import { textArgument } from '../argument/text.js';
import { gradeArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

export const bendUse = define({
  name: 'BENDUSE',
  purpose: 'Share of a press rating that an air bend takes; 1 is full',
  arguments: {
    press: textArgument('Name of the press', 'the name of a press of the shop'),
    length: lengthArgument('width', 'Length of the bend'),
    thickness: lengthArgument('thickness', 'Thickness of the material'),
    grade: gradeArgument(),
    shop: shopArgument,
    vee: optionalLengthArgument(
      'distance',
      'Opening of the V die',
      'the smallest on hand that the V opening ratio and the least radius allow',
    ),
  },
  result: 'ratio',
  gives:
    'A share of Punch force, 1 is full; the verdict word where a size limit, a missing V opening or a blank stops it.',
  errors:
    '#N/A for a press that is not in the shop; #VALUE! with the reason for a press cell that cannot be read.',
  source: 'the plate of the press, as given; force: Groover (from memory)',
  example: '=TONROW.BENDUSE("Bay A",6,"1/4","A36",ShopStamp)',
  compute({ press, length, thickness, grade, shop, vee }, _, working) {
    const found = findPress(press, 'Press', shop);
    const job = {
      lengthMm: length,
      thicknessMm: thickness,
      grade,
      tensileMPa: upperTensileMPa({ grade, thicknessMm: thickness }, working),
      veeRatio: setting(shop, 'veeRatio'),
      ...(vee === undefined ? {} : { veeMm: vee }),
    };
    return stationUse(bendFindings(found, job, working), working);
  },
});
