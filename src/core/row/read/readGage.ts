import { refuse } from '../../inputError.js';
import { quoted } from '../../quantity/cellValue.js';
import { tradeText } from '../../quantity/tradeText.js';
import { longestCell } from './cellWords.js';
import { listItems } from './listItems.js';
import { withoutMarks } from './pitchText.js';

/** What the reading of a gage hangs on. */
export interface GageContext {
  argument: string;
  length: (text: string) => number;
  /** The holes are in a leg or a flange, whose gage is from the heel; else it lies between two lines. */
  onLeg: boolean;
  /** The least that two holes must be apart not to lie in each other. */
  leastApartMm: number;
}

const symbol = /^(?:gol|ga(?:ge)?|g|w1?)(?![a-z]) ?[=:]? ?/;
const symbolBehind = /(?<=[\d"]) ?(?:gol|ga(?:ge)?)\.?$/;
const counted = /^(\d{1,2}) ?[@xàá] ?(.+)$/;
/** Lines of holes lie nearer to each other than this: `1,75` in is no space of 75. */
const greatestSpaceMm = 300;
const numbers = ['no', 'one', 'two', 'three', 'four', 'five', 'six'];

/**
 * Reads a gage: from the heel of a leg, between two lines of a plate or web. Throws `invalid` for more lines than that,
 * `2@3`, `3; 3`, and for a comma that may part two spaces. Common practice, no source.
 */
export function readGage(text: string, context: GageContext): number {
  const { argument, length } = context;
  if (text.length > longestCell) return length(text);
  const plain = withoutMarks(tradeText(text.replaceAll('\n', ';')))
    .replace(symbol, '')
    .replace(symbolBehind, '');
  const { items, parted } = listItems(plain);
  if (parted && parted.every((each) => /^\d+$/.test(each) && isSpace(each, context))) {
    const [one = '', two = ''] = parted;
    const problem = `${quoted(text)} may be ${one}.${two} or spaces of ${one} and ${two}.`;
    refuse(argument, text, problem, `Write ${one}.${two} for one.`);
  }
  const spaces = items.reduce((sum, item) => sum + Number(counted.exec(item)?.[1] ?? 1), 0);
  if (spaces > 1) refuseLines(text, spaces, context);
  const [only = text] = items;
  return length(counted.exec(only)?.[2] ?? only);
}

function isSpace(text: string, { length, leastApartMm }: GageContext): boolean {
  const mm = length(text);
  return leastApartMm > 0 && mm > leastApartMm && mm <= greatestSpaceMm;
}

function refuseLines(text: string, spaces: number, { argument, onLeg }: GageContext): never {
  const lines = onLeg ? spaces : spaces + 1;
  const problem = `${quoted(text)} is ${numbers[lines] ?? lines} lines of holes; a group has ${onLeg ? 'one in a leg' : 'one or two'}.`;
  const fix =
    'Give the others as a further group, Hole 2 with its own distances, or every hole under Holes at.';
  return refuse(argument, text, problem, fix);
}
