import { itemName } from '../press/limit.js';
import type { PressItemKey } from '../press/item/pressItem.js';
import type { LengthUnit } from '../quantity/units.js';
import type { StrokeOperation } from '../stroke/strokeJob.js';
import type { StopsOfStroke, StrokeLimits } from '../stroke/strokeLimits.js';
import { listWords } from './listWords.js';
import { pressSentence } from './pressSentence.js';
import { asSentences } from './sentencesOf.js';
import { size } from './sizes.js';

const neverAGuard = 'A short stroke saves time; it is never a guard.';
const setByPiece = 'Set both stops with a test piece.';

/** The word that stands in place of the stops, where there are none. */
export function stopsWord(limits: Exclude<StrokeLimits, { is: 'stops' }>): string {
  switch (limits.is) {
    case 'test piece':
      return 'test piece';
    case 'stopped':
      return limits.finding.verdict;
    case 'out of travel':
      return 'Too big';
  }
}

/** Why there are no stops. */
export function stopsWhy(
  limits: Exclude<StrokeLimits, { is: 'stops' }>,
  press: string,
  unit: LengthUnit,
): string {
  switch (limits.is) {
    case 'test piece':
      return `${setByPiece} ${neverAGuard}`;
    case 'stopped':
      return asSentences([pressSentence(limits.finding, unit)]).join(' ');
    case 'out of travel':
      return travelSentence(limits, press, unit);
  }
}

function travelSentence(
  { why, givenMm, limitMm }: Extract<StrokeLimits, { is: 'out of travel' }>,
  press: string,
  unit: LengthUnit,
): string {
  const [given, limit] = [size(givenMm, unit), size(limitMm, unit)];
  return why === 'no room over the work'
    ? `At the top of the stroke of ${press} the punch stands ${given} over the die; work and gap need ${limit}. Use a shorter punch.`
    : `The punch of ${press} must travel ${given} to go into the die; its stroke is ${limit}. Use a longer punch.`;
}

/** How the stops are set, what they stand on and what was not checked. */
export function stopsNote(
  { upperMm, stripperMm, travel, notChecked }: StopsOfStroke,
  operation: StrokeOperation,
  press: string,
  unit: LengthUnit,
): string {
  const sentences = [setWords(operation, upperMm, unit)];
  if (stripperMm !== undefined) sentences.push(`Stripper level, ${size(stripperMm, unit)} over the die.`);
  if (travel) {
    const [upper, lower] = [size(travel.upperMm, unit), size(travel.lowerMm, unit)];
    sentences.push(`The ram travels ${upper} down to the upper stop and ${lower} to the lower.`);
  }
  if (notChecked.length > 0) {
    const were = notChecked.length > 1 ? 'they were' : 'it was';
    sentences.push(`${lackingWords(notChecked, press)}, so ${were} not checked.`);
  }
  return [...sentences, neverAGuard].join(' ');
}

function setWords(operation: StrokeOperation, upperMm: number, unit: LengthUnit): string {
  switch (operation) {
    case 'punch':
      return 'Jog with this punch, then set; check again after grinding.';
    case 'notch':
      return 'Jog with this blade, then set: the upper stop just above the work, the lower until the notch drops. Check again after grinding.';
    case 'bend':
      return setByPiece;
    default:
      return `Jog, then set: the blade opens to ${size(upperMm, unit)}, and closes with its full stroke, so that the piece drops clean.`;
  }
}

/** Items that a press does not give: `Approach speed and Return speed of Bay A are not given`. */
export function lackingWords(items: readonly PressItemKey[], press: string): string {
  return `${listWords(items.map(itemName))} of ${press} ${items.length > 1 ? 'are' : 'is'} not given`;
}
