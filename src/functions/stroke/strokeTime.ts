import { lackingWords, stopsWhy, stopsWord } from '../../core/say/strokeWords.js';
import { findPress } from '../../core/shop/findPress.js';
import { strokeTime as timeOf, type StrokeTime } from '../../core/stroke/strokeTime.js';
import { textValue } from '../../core/working/namedValue.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { lengthArgument } from '../argument/length.js';
import { shopArgument } from '../argument/shop.js';
import { textArgument } from '../argument/text.js';
import { define } from '../descriptor/descriptor.js';
import { operationArgument } from './strokeLimits.js';

export const strokeTime = define({
  name: 'STROKETIME',
  purpose: 'Seconds of one stroke between its stops, from the speeds of the press or its strokes per minute',
  arguments: {
    press: textArgument('Name of the press', 'the name of a press of the shop'),
    operation: operationArgument,
    thickness: lengthArgument('thickness', 'Thickness of the material; of a round or square bar its size'),
    shop: shopArgument,
  },
  result: 'seconds',
  gives:
    'Seconds: approach, press and return over their travel, else strokes per minute scaled by it; as text what the press does not say. A short stroke saves time and is never a guard.',
  errors:
    '#N/A for a press that is not in the shop; #VALUE! with the reason for a cell of the press that cannot be read.',
  source: 'the press and settings of the shop; common practice, no source',
  example: '=TONROW.STROKETIME("Bay A","punch","3/8",ShopStamp)',
  compute({ press, operation, thickness, shop }, { unit }, working) {
    const found = findPress(press, 'Press', shop);
    const time = timeOf(found, { operation, thicknessMm: thickness }, shop, working);
    if (time.is === 'timed') return time.seconds;
    const words = wordsOf(time, found.name, unit);
    working?.step({
      title: 'Time of a stroke',
      formula: 'from the speeds of the press, or its strokes per minute',
      values: [],
      result: textValue('T', 'what is lacking', words),
      source: 'the press, as given in the Presses table',
    });
    return words;
  },
});

function wordsOf(time: Exclude<StrokeTime, { is: 'timed' }>, press: string, unit: LengthUnit): string {
  if (time.is === 'test piece') return 'Not checked: the stroke of a bend is set with a test piece.';
  if (time.is !== 'lacking') return `${stopsWord(time)}: ${stopsWhy(time, press, unit)}`;
  return `Not checked: ${lackingWords(time.items, press)}.`;
}
