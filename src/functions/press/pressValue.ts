import { refuse, refuseUnknown, sentenceInCell } from '../../core/inputError.js';
import { didYouMean } from '../../core/nearNames.js';
import { pressSource } from '../../core/press/limit.js';
import { type PressValue, pressValue as valueOf } from '../../core/press/press.js';
import { type PressItem, pressItems } from '../../core/press/item/pressItem.js';
import { legPositions } from '../../core/press/readPressValue.js';
import { quoted } from '../../core/quantity/cellValue.js';
import { formatLength } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { findPress } from '../../core/shop/findPress.js';
import { nameKey } from '../../core/shop/table.js';
import type { NamedValue } from '../../core/working/working.js';
import { shopArgument } from '../argument/shop.js';
import { textArgument } from '../argument/text.js';
import { define } from '../descriptor/descriptor.js';
import { inShopUnit, shopUnits } from '../../core/quantity/shopUnit.js';

const itemNames = pressItems.map((each) => each.name);

export const pressValue = define({
  name: 'PRESSVALUE',
  purpose: 'One value of a press as the shop states it, in the units of the shop',
  arguments: {
    press: textArgument('Name of the press', 'the name of a press of the shop'),
    item: textArgument(
      'Item, as it stands in the Presses table',
      'an item of the Presses table, such as Punch throat',
    ),
    shop: shopArgument,
  },
  result: 'ratio',
  gives:
    'The value as a number; yes or no for a station; a list of sizes as text; "none" for no limit, "unknown" for a blank cell.',
  errors:
    '#N/A for a press or item that is not there; #VALUE! with the reason for a cell that cannot be read.',
  source: 'the plate and manual of the press, as given in the Presses table',
  example: '=TONROW.PRESSVALUE("Bay A","Punch throat",ShopStamp)',
  compute({ press, item, shop }, { unit }, working) {
    const found: PressItem | undefined = pressItems.find((each) => nameKey(each.name) === nameKey(item));
    if (!found) {
      const hint = didYouMean(nameKey(item), itemNames, nameKey) ?? 'Write a name of the Item column.';
      return refuseUnknown('Item', item, `${quoted(item)} is not an item of a press.`, hint);
    }
    const value = valueOf(findPress(press, 'Press', shop), found.key as (typeof pressItems)[number]['key']);
    if (value.state === 'bad') return refuse('Item', item, sentenceInCell(value.failure), '');
    const read = quantity(value, found, unit);
    working?.step({
      title: found.name,
      formula: 'as given',
      values: [{ symbol: 'press', meaning: 'press', kind: 'text', value: press }],
      result: { symbol: 'value', meaning: found.meaning, ...read },
      source: pressSource,
    });
    const { kind } = read;
    return typeof read.value === 'string' || kind === 'text'
      ? read.value
      : inShopUnit(read.value, kind, unit);
  },
});

const legWords = ['no', 'one', 'both'];

/** A press value as it is shown: a quantity, or the words of a station or of mitered legs. */
function quantity(
  value: PressValue,
  { kind }: PressItem,
  unit: LengthUnit,
): Pick<NamedValue, 'kind' | 'value'> {
  if (value.state === 'list') {
    return { kind: 'text', value: value.values.map((mm) => formatLength(mm, unit)).join(', ') };
  }
  if (value.state !== 'value') return { kind: 'text', value: value.state };
  if (kind === 'station' || kind === 'yesNo')
    return { kind: 'text', value: value.value === 0 ? 'no' : 'yes' };
  if (kind === 'legs') return { kind: 'text', value: legWords[value.value] ?? '' };
  if (kind === 'legPosition') return { kind: 'text', value: legPositions[value.value] ?? '' };
  return { kind: kind in shopUnits ? (kind as keyof typeof shopUnits) : 'ratio', value: value.value };
}
