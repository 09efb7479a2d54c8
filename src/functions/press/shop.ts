import { readShop } from '../../core/shop/readShop.js';
import { optionalRangeArgument, rangeArgument } from '../argument/text.js';
import { define } from '../descriptor/descriptor.js';

export const shop = define({
  name: 'SHOP',
  purpose: 'The stamp of the shop: units, presses, edition of the rules and a hash of all its data',
  arguments: {
    presses: rangeArgument(
      'The Presses table with its headings: Item, Unit, one column per press. In a mm shop, t is the tonne',
    ),
    tools: optionalRangeArgument('The Tools table with its headings', 'tools are not checked'),
    grades: optionalRangeArgument('The Grades table with its headings', 'built-in grades only'),
    settings: optionalRangeArgument(
      'The Settings table with its headings: Setting, Value',
      'inches and the usual rules',
    ),
  },
  result: 'text',
  gives:
    'Text such as "in · 2 presses · rules 1 · 7K7Q-29MX-DT4P". Functions that need the shop take this cell.',
  errors: '#VALUE! when a table has no headings that can be read, or Units is neither in nor mm.',
  source: 'FIPS 180-4 (SHA-256) for the hash',
  example: '=TONROW.SHOP({"Item","Unit","Bay A";"Punch force","US ton",60;"Punch","","yes"})',
  compute(tables, { register }, working) {
    const read = readShop(tables);
    register(read);
    working?.step({
      title: 'Stamp of the shop',
      formula: 'units · presses · edition of the rules · hash of the content',
      values: [{ symbol: 'presses', meaning: 'presses', kind: 'count', value: read.presses.length }],
      result: { symbol: 'stamp', meaning: 'stamp of the shop', kind: 'text', value: read.stamp },
      source: 'FIPS 180-4 (SHA-256) for the hash',
    });
    return read.stamp;
  },
});
