import { angleGageMm, type GageLine } from '../../core/rule/angleGage.js';
import type { Choice } from '../argument/argument.js';
import { optionalChoiceArgument } from '../argument/choice.js';
import { lengthArgument } from '../argument/length.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { define } from '../descriptor/descriptor.js';

const lines: readonly (Choice & { value: GageLine })[] = [
  { value: 'usual', meaning: 'one line of holes, from the heel' },
  { value: 'first', meaning: 'the first of two lines, from the heel' },
  { value: 'second', meaning: 'the second of two lines, from the first' },
];

export const angleGage = define({
  name: 'ANGLEGAGE',
  purpose: 'Usual gage of the holes in the leg of an angle',
  arguments: {
    leg: lengthArgument('leg', 'Leg of the angle: 3, 3-1/2, 75 mm, or a number in the unit of the shop'),
    shop: shopOrUnitArgument,
    line: optionalChoiceArgument('Which line of holes', lines, 'usual'),
  },
  result: 'length',
  gives: 'Distance from the heel, in or mm; of the second line from the first.',
  errors: '#N/A for a leg that stands in neither table, and for two lines in a leg under 5 in.',
  source: 'AISC Manual Table 1-7A; DIN 997 (both from memory)',
  example: '=TONROW.ANGLEGAGE(3)',
  compute({ leg, line }, _context, working) {
    return angleGageMm({ legMm: leg, line: line ?? 'usual' }, working);
  },
});
