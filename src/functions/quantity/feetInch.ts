import { refuse } from '../../core/inputError.js';
import { isBlank, quoted } from '../../core/quantity/cellValue.js';
import { feetInchText, inchDenominators } from '../../core/quantity/feetInch.js';
import { readNumber } from '../../core/quantity/readNumber.js';
import type { ScalarArgument } from '../argument/argument.js';
import { lengthArgument } from '../argument/length.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { define } from '../descriptor/descriptor.js';

const allowed = `Write ${inchDenominators.join(', ')}.`;

const denominatorArgument: ScalarArgument<number | undefined> = {
  kind: 'count',
  meaning: 'Parts of an inch to round to: 1, 2, 4, 8, 16, 32 or 64',
  dimensionality: 'scalar',
  optional: true,
  omitted: '16',
  read: (value, { argument }) => {
    if (isBlank(value)) return undefined;
    const denominator = readNumber(value, argument, allowed);
    if (inchDenominators.some((each) => each === denominator)) return denominator;
    return refuse(argument, String(value), `${quoted(value)} is not a fraction of a rule.`, allowed);
  },
};

export const feetInch = define({
  name: 'FEETINCH',
  purpose: 'A length in feet and inches, as text',
  arguments: {
    length: lengthArgument('length', 'A length as text, or a number in the unit of the shop'),
    shop: shopOrUnitArgument,
    denominator: denominatorArgument,
  },
  result: 'text',
  gives: 'Text such as 2\'-6 1/2", rounded to the nearest 1/16 in or the fraction asked for.',
  errors: '#VALUE! for a length that rounds to nothing.',
  source: 'common practice, no source',
  example: '=TONROW.FEETINCH(30.5)',
  compute({ length, denominator }, _context, working) {
    return feetInchText({ lengthMm: length, denominator: denominator ?? 16 }, working);
  },
});
