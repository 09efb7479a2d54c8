import { miterKerfMm } from '../../core/cut/miterKerf.js';
import { lengthArgument } from '../argument/length.js';
import { miterArgument } from '../argument/mitered.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { define } from '../descriptor/descriptor.js';

export const miterKerf = define({
  name: 'MITERKERF',
  purpose: 'What a kerf or slug takes along the bar, where the cut is mitered',
  arguments: {
    kerf: lengthArgument('thickness', 'Kerf of the saw or slug of the shear, across the cut: 1/8, 3 mm'),
    miter: miterArgument('Angle of the cut in degrees from square'),
    shop: shopOrUnitArgument,
  },
  result: 'length',
  gives: 'A length in the unit of the shop: kerf / cos miter.',
  errors: '#VALUE! for a miter over 60°.',
  source: 'plane geometry',
  example: '=TONROW.MITERKERF("1/8",45)',
  compute({ kerf, miter }, _, working) {
    return miterKerfMm({ kerfMm: kerf, miterRad: miter }, working);
  },
});
