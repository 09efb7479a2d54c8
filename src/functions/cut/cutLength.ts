import { cutLengthMm } from '../../core/cut/cutLength.js';
import { lengthArgument } from '../argument/length.js';
import {
  kerfArgument,
  miterArgument,
  miteredSectionArgument,
  miterRightArgument,
} from '../argument/mitered.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { define } from '../descriptor/descriptor.js';

export const cutLength = define({
  name: 'CUTLENGTH',
  purpose: 'What is pushed to the stop to cut a piece off, kerf or slug included',
  arguments: {
    long: lengthArgument('length', 'Length of the piece between its long points: 2\'-6 1/2", 750 mm'),
    section: miteredSectionArgument,
    miterLeft: miterArgument('Miter of the end at the stop, in degrees from square; blank for a square end'),
    shop: shopOrUnitArgument,
    miterRight: miterRightArgument,
    kerf: kerfArgument,
  },
  result: 'length',
  gives:
    'A length in the unit of the shop, from the stop to the far side of the cut. It runs along the edge that touches the stop. That is the edge with the left long point, or the longer edge where the left end is square.',
  errors: '#VALUE! where the miters leave no piece, and for sections that may be mitered in several planes.',
  source: 'plane geometry',
  example: '=TONROW.CUTLENGTH(36,"L3X3X1/4",45,"in",45,"3/8")',
  compute({ long, section, miterLeft, miterRight, kerf }, _, working) {
    const piece = { longMm: long, widthMm: section.planeMm };
    const cut = { ...piece, miterLeftRad: miterLeft, miterRightRad: miterRight, kerfMm: kerf ?? 0 };
    return cutLengthMm(cut, working);
  },
});
