import { lengthArgument } from '../argument/length.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { define } from '../descriptor/descriptor.js';

export const length = define({
  name: 'LENGTH',
  purpose: 'A length in trade notation as a number in the unit of the shop',
  arguments: {
    text: lengthArgument('length', 'A length: 3/8, 1-3/16, 2\'-6 1/2", 1-0 3/8, 12 mm'),
    shop: shopOrUnitArgument,
  },
  result: 'length',
  gives: 'The length as a number, in or mm.',
  errors: '#VALUE! for text that is no length or may be read two ways, with both readings.',
  source: 'NIST SP 811, Appendix B (from memory); notation: common practice, no source',
  example: '=TONROW.LENGTH("2\'-6 1/2""")',
  compute({ text }, { unit }, working) {
    working?.step({
      title: 'Length as read',
      formula: 'L',
      values: [{ symbol: 'unit', meaning: 'unit of the shop', kind: 'text', value: unit }],
      result: { symbol: 'L', meaning: 'length', kind: 'length', value: text },
      source: 'NIST SP 811, Appendix B (from memory)',
    });
    return text;
  },
});
