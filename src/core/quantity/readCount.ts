import { refuse } from '../inputError.js';
import type { CellValue } from './cellValue.js';
import { mayBeDate, turnedDate } from './dateTrap.js';
import {
  digitsValue,
  pointBeforeThree,
  readNumber,
  refuseBothReadings,
  refuseThousandsPoint,
} from './readNumber.js';
import { tradeText } from './tradeText.js';

/** Words that say no more than that it is a count: `4 EA`, `4 Stk`, `QTY 4`, `4 holes`. */
export const countWords = [
  ...[
    'ea',
    'each',
    'pc',
    'pcs',
    'pce',
    'pces',
    'piece',
    'pieces',
    'off',
    'no',
    'nos',
    'req',
    'required',
    'total',
    'typ',
    'places',
    'plcs',
    'reqd',
    "req'd",
    'x',
  ],
  ...['stk', 'stck', 'st', 'stück', 'stueck', 'pz', 'pza', 'pzas', 'pièces', 'pièce', 'ud', 'uds', 'u'],
  ...['hole', 'holes', 'loch', 'löcher', 'bohrung', 'bohrungen', 'trou', 'trous', 'agujero', 'agujeros'],
];
const words = new Set(countWords);
const longestText = 30;
const countPattern = /^(?:(?:qty|no|nr|anz|anzahl|x)[.:]? ?)?(\(\d+\)|[\d.,]+)(?: ?([a-zäöüèé']+)\.?)?$/;

/**
 * A count from a cell: a number, or text with a word that only says so (`4 EA`, `(4)`, `4x`, `QTY 4`). Whether it is
 * whole and in range is for the caller. Throws for what is no number, and for what has two readings: `1,500`,
 * `1.500`, a date. Common practice, no source.
 */
export function readCount(value: CellValue, argument: string, allowed: string): number {
  if (typeof value === 'number' && mayBeDate(value)) {
    const problem = `${value} may be a count that became the date ${turnedDate(value)?.date}.`;
    return refuse(argument, String(value), problem, `Type it again as text: ${value} or what was meant.`);
  }
  if (typeof value !== 'string' || value.length > longestText) return readNumber(value, argument, allowed);
  const [, digits = '', word] = countPattern.exec(tradeText(value)) ?? [];
  if (digits === '' || (word !== undefined && !words.has(word))) return readNumber(value, argument, allowed);
  const run = digits.replace(/[()]/g, '');
  if (pointBeforeThree.test(run)) refuseThousandsPoint(argument, value, run);
  const count = digitsValue(run);
  if (count === 'ambiguous') refuseBothReadings(argument, value, run);
  return count ?? readNumber(value, argument, allowed);
}
