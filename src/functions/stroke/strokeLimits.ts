import { refuse } from '../../core/inputError.js';
import type { Press } from '../../core/press/press.js';
import { inShopUnit } from '../../core/quantity/shopUnit.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { pickPunch } from '../../core/row/pickPunch.js';
import { stopsNote, stopsWhy, stopsWord } from '../../core/say/strokeWords.js';
import { findPress } from '../../core/shop/findPress.js';
import type { Shop } from '../../core/shop/readShop.js';
import { type StrokeOperation } from '../../core/stroke/strokeJob.js';
import { strokeLimits as limitsOf } from '../../core/stroke/strokeLimits.js';
import { describeHole, type Hole } from '../../core/tooling/hole.js';
import { lengthValue, textValue } from '../../core/working/namedValue.js';
import { choiceArgument } from '../argument/choice.js';
import { lengthArgument } from '../argument/length.js';
import { shopArgument } from '../argument/shop.js';
import { textArgument } from '../argument/text.js';
import { optionalHoleArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';

export const operationArgument = choiceArgument<StrokeOperation>('What the stroke does', [
  { value: 'punch', meaning: 'punches a hole' },
  { value: 'notch', meaning: 'cuts a notch or clips a corner' },
  { value: 'flat shear', meaning: 'cuts a flat bar or plate' },
  { value: 'angle shear', meaning: 'cuts an angle' },
  { value: 'bar shear', meaning: 'cuts a round or square bar' },
  { value: 'bend', meaning: 'bends over a V die' },
]);

export const strokeLimits = define({
  name: 'STROKELIMITS',
  purpose: 'The upper and lower stop of a stroke, from the top of the die, and how they are set',
  arguments: {
    press: textArgument('Name of the press', 'the name of a press of the shop'),
    operation: operationArgument,
    thickness: lengthArgument('thickness', 'Thickness of the material; of a round or square bar its size'),
    shop: shopArgument,
    hole: optionalHoleArgument(
      'Hole to be punched: the height of its punch is then checked against the press',
      'the height of the punch is not checked',
    ),
  },
  result: 'cells',
  gives:
    'Upper stop, lower stop and a note side by side. Stops in in or mm from the top of the die, below it negative; full stroke at a shear; test piece for a bend; else the verdict word, a blank and why. A short stroke is never a guard.',
  errors:
    '#N/A for a press that is not in the shop; #VALUE! with the reason for a cell of the press that cannot be read, and for a hole with another operation than punch.',
  source: 'the press and settings of the shop; common practice, no source',
  example: '=TONROW.STROKELIMITS("Bay A","punch","3/8",ShopStamp)',
  compute({ press, operation, thickness, shop, hole }, { unit }, working) {
    const found = findPress(press, 'Press', shop);
    if (hole && operation !== 'punch') {
      const read = describeHole(hole.hole, unit);
      refuse('Hole', read, `${operation} has no punch for a hole.`, 'Leave it out, or write punch.');
    }
    const { punchHeightMm, why = '' } = hole ? heightOf(hole.hole, found, shop, unit) : {};
    const job = {
      operation,
      thicknessMm: thickness,
      ...(punchHeightMm === undefined ? {} : { punchHeightMm }),
    };
    const limits = limitsOf(found, job, shop, working);
    const upper =
      limits.is === 'stops'
        ? lengthValue('upper', 'upper stop, from the top of the die', limits.upperMm)
        : textValue('upper', 'what stops it', stopsWord(limits));
    working?.step({
      title: 'Upper stop',
      formula: 'as above',
      values: [],
      result: upper,
      source: 'the press and settings of the shop',
    });
    if (limits.is !== 'stops') {
      const word = stopsWord(limits);
      return [[word, limits.is === 'test piece' ? word : '', stopsWhy(limits, found.name, unit)]];
    }
    const { upperMm, lowerMm } = limits;
    const lower = lowerMm === undefined ? 'full stroke' : inShopUnit(lowerMm, 'length', unit);
    const note = [stopsNote(limits, operation, found.name, unit), why].join(' ').trim();
    return [[inShopUnit(upperMm, 'length', unit), lower, note]];
  },
});

interface Height {
  punchHeightMm?: number;
  /** Why it is not known. */
  why?: string;
}

/** The height of the punch that is picked for a hole. */
function heightOf(hole: Hole, press: Press, { tools }: Shop, unit: LengthUnit): Height {
  const name = `punch ${describeHole(hole, unit)}`;
  const { punch } = pickPunch(press, hole, tools?.tools ?? []) ?? {};
  if (!punch) return { why: `No ${name} is on hand for ${press.name}, so its height was not checked.` };
  const { heightMm, heightProblem = `Height of ${name} is blank, so it was not checked.` } = punch;
  return heightMm === undefined ? { why: heightProblem } : { punchHeightMm: heightMm };
}
