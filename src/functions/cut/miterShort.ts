import { miterShortMm } from '../../core/cut/miterShort.js';
import { lengthArgument } from '../argument/length.js';
import { miterArgument, miteredSectionArgument, miterRightArgument } from '../argument/mitered.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { define } from '../descriptor/descriptor.js';

export const miterShort = define({
  name: 'MITERSHORT',
  purpose: 'The shorter edge of a mitered piece, from its length between the long points',
  arguments: {
    long: lengthArgument('length', 'Length of the piece between its long points: 2\'-6 1/2", 750 mm'),
    section: miteredSectionArgument,
    miterLeft: miterArgument('Left miter in degrees from square; blank for a square end'),
    shop: shopOrUnitArgument,
    miterRight: miterRightArgument,
  },
  result: 'length',
  gives:
    'A length in the unit of the shop; 0 where the miters meet in a point. The width is that of the flat, of an angle its leg written first.',
  errors: '#VALUE! where the miters leave no piece, and for sections that may be mitered in several planes.',
  source: 'plane geometry',
  example: '=TONROW.MITERSHORT(36,"L3X3X1/4",45,"in",45)',
  compute({ long, section, miterLeft, miterRight }, _, working) {
    const piece = { longMm: long, widthMm: section.planeMm };
    return miterShortMm({ ...piece, miterLeftRad: miterLeft, miterRightRad: miterRight }, working);
  },
});
