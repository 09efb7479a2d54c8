import { refuse, refuseUnknown } from '../../core/inputError.js';
import { nearNames } from '../../core/nearNames.js';
import { pressValue as valueOf } from '../../core/press/press.js';
import { type PressItem, pressItems } from '../../core/press/pressItem.js';
import { quoted } from '../../core/quantity/cellValue.js';
import {
  kilogramPerPound,
  type LengthUnit,
  megapascalPerKsi,
  mmPer,
  newtonPerKilonewton,
  newtonPerUsTon,
  radianPerDegree,
} from '../../core/quantity/units.js';
import { findPress } from '../../core/shop/findPress.js';
import { nameKey } from '../../core/shop/table.js';
import { shopArgument } from '../argument/shop.js';
import { textArgument } from '../argument/text.js';
import { define } from '../descriptor.js';

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
    'The value as a number; yes or no for a station; the text "none" for no limit, "unknown" for a blank cell.',
  errors:
    '#N/A for a press or item that is not there; #VALUE! with the reason for a cell that cannot be read.',
  source: 'the plate and manual of the press, as given in the Presses table',
  example: '=TONROW.PRESSVALUE("Bay A","Punch throat",ShopStamp)',
  compute({ press, item, shop }, { unit }) {
    const found: PressItem | undefined = pressItems.find((each) => nameKey(each.name) === nameKey(item));
    if (!found) {
      const near = nearNames(nameKey(item), itemNames, nameKey);
      const hint = near.length > 0 ? `Near names: ${near.join(', ')}.` : 'Write a name of the Item column.';
      return refuseUnknown('Item', item, `${quoted(item)} is not an item of a press.`, hint);
    }
    const value = valueOf(findPress(press, 'Press', shop), found.key as (typeof pressItems)[number]['key']);
    if (value.state === 'bad') return refuse('Item', item, value.message, '');
    return value.state === 'value' ? shown(value.value, found, unit) : value.state;
  },
});

const perShopUnit: Partial<Record<PressItem['kind'], Record<LengthUnit, number>>> = {
  force: { in: newtonPerUsTon, mm: newtonPerKilonewton },
  length: mmPer,
  stress: { in: megapascalPerKsi, mm: 1 },
  mass: { in: kilogramPerPound, mm: 1 },
  angle: { in: radianPerDegree, mm: radianPerDegree },
};

function shown(value: number, item: PressItem, unit: LengthUnit): number | string {
  if (item.kind === 'station') return value === 0 ? 'no' : 'yes';
  return value / (perShopUnit[item.kind]?.[unit] ?? 1);
}
