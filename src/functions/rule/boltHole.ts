import { boltHole as holeFor, type HoleCode, type HoleFit } from '../../core/rule/boltHole.js';
import type { Shop } from '../../core/shop/readShop.js';
import { setting } from '../../core/shop/setting.js';
import { slotText } from '../../core/tooling/slotText.js';
import { textValue } from '../../core/working/namedValue.js';
import type { Choice } from '../argument/argument.js';
import { optionalChoiceArgument } from '../argument/choice.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { boltArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

const fits: readonly (Choice & { value: HoleFit })[] = [
  { value: 'standard', meaning: 'AISC, EN' },
  { value: 'oversize', meaning: 'AISC, EN' },
  { value: 'short slot', meaning: 'AISC, EN' },
  { value: 'long slot', meaning: 'AISC, EN' },
  { value: 'anchor rod', meaning: 'AISC Design Guide 1: anchor rods in base plates' },
  { value: 'fine', meaning: 'ISO 273' },
  { value: 'medium', meaning: 'ISO 273' },
  { value: 'coarse', meaning: 'ISO 273' },
];

const codes: readonly (Choice & { value: HoleCode })[] = [
  { value: 'AISC', meaning: 'AISC 360-22 Tables J3.3, J3.3M; AISC Design Guide 1' },
  { value: 'EN', meaning: 'EN 1090-2 Table 11' },
  { value: 'ISO 273', meaning: 'ISO 273 clearance holes' },
];

export const boltHole = define({
  name: 'BOLTHOLE',
  purpose: 'Hole for a bolt by code and fit: a diameter, or a slot as text',
  arguments: {
    bolt: boltArgument(),
    shop: shopOrUnitArgument,
    fit: optionalChoiceArgument(
      'The fit of the hole',
      fits,
      'the setting Hole fit, else standard; ISO 273 medium',
    ),
    code: optionalChoiceArgument('The code', codes, 'EN where the edge code of the shop is EN, else AISC'),
  },
  result: 'length',
  gives: 'A diameter in in or mm; a slot as text that reads as a hole again: 13/16x1-7/8.',
  errors: '#N/A for a bolt that stands in no row of the table; #VALUE! for a fit the code does not have.',
  source:
    'AISC 360-22 Table J3.3 (from memory), J3.3M; AISC Design Guide 1; EN 1090-2 Table 11; ISO 273 (from memory)',
  example: '=TONROW.BOLTHOLE("3/4","in","long slot")',
  compute({ bolt, shop, fit, code }, { unit }, working) {
    const chosen = code ?? holeCode(shop);
    const { widthMm, lengthMm } = holeFor(
      { bolt, fit: fit ?? usualFit(chosen, shop), code: chosen },
      working,
    );
    if (lengthMm === undefined) return widthMm;
    const text = slotText({ widthMm, lengthMm }, unit);
    working?.step({
      title: 'Slot as written',
      formula: 'w x l',
      values: [],
      result: textValue('', 'slot, width and length over all', text),
      source: 'common practice',
    });
    return text;
  },
});

function holeCode(shop: Shop | undefined): HoleCode {
  return setting(shop, 'edgeCode') === 'EN' ? 'EN' : 'AISC';
}

function usualFit(code: HoleCode, shop: Shop | undefined): HoleFit {
  return code === 'ISO 273' ? 'medium' : setting(shop, 'holeFit');
}
