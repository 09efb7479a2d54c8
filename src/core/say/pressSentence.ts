import type { FindingOf, PressFinding } from '../check/finding.js';
import { sentenceInCell } from '../inputError.js';
import { governsOf, itemName } from '../press/limit.js';
import { toleranceMm } from '../part/tolerance.js';
import { formatLength, nextSizeMm } from '../quantity/formatLength.js';
import { formatMass } from '../quantity/formatMass.js';
import { formatQuantity } from '../quantity/formatQuantity.js';
import { withUnit } from '../quantity/sizeAsTyped.js';
import { sizeLikeTyped } from '../quantity/sizeLikeTyped.js';
import type { LengthUnit } from '../quantity/units.js';
import { nameHole } from '../tooling/hole.js';
import { holeTitle } from '../row/job/rowJob.js';
import { shareSentence } from './shareSentence.js';
import { isMass } from '../press/sizeMeaning.js';
import { sizedWords } from './sizedWords.js';
import { size, sizes } from './sizes.js';

/** What a check against a press says, in one sentence; empty for what is held, not near the limit and nothing to know. */
export function pressSentence(finding: PressFinding, unit: LengthUnit): string {
  const told = finding.outcome !== 'held' || finding.verdict === 'Near limit';
  return told ? sentence(finding, finding.press ?? 'the press', unit) : '';
}

function sentence(finding: PressFinding, press: string, unit: LengthUnit): string {
  switch (finding.rule) {
    case 'refusal':
      return sentenceInCell(finding.failure);
    case 'station':
      return stationSentence(finding, press);
    case 'press limit':
      return `${sizedWords(finding, unit)} is over ${press}'s ${governsOf(finding.item)}, ${limitWords(finding, unit)}.`;
    case 'blank item':
      return `${itemName(finding.item)} of ${press} is blank, so it was not checked.`;
    case 'shear minimum':
      return minimumSentence(finding, press, unit);
    case 'smallest hole':
      return smallestHoleSentence(finding, unit);
    case 'share':
      return shareSentence(finding, unit);
    case 'blade material':
      return bladeSentence(finding, press, unit);
    case 'widest bar':
      return `a cut ${size(finding.given, unit)} wide is over ${press}'s widest bar, ${size(finding.limit, unit)}.`;
    case 'plate thickness': {
      const { widthMm, thicknessMm } = finding.plate;
      return `${size(finding.given, unit)} thick is over ${press}'s rated size ${sizes([widthMm, thicknessMm], unit)}.`;
    }
    case 'nothing stated':
      return `${press} states neither sizes nor a force for its ${finding.of}, so the cut was not checked.`;
    case 'miter':
      return miterSentence(finding, press);
    case 'vee opening':
      return veeSentence(finding, press, unit);
    case 'leg beside punch':
      return legSentence(finding, press, unit);
    case 'narrowest notch':
      return `a notch ${size(finding.given, unit)} wide is narrower than ${press} makes in an edge, ${size(finding.limit, unit)}. Use a narrower tool, or saw or burn it.`;
    case 'notch bites':
      return `The notch on ${press}: ${finding.failure.problem} ${finding.failure.allowed}`;
    case 'several bites':
      return `a notch takes ${finding.count} bites on ${press}.`;
    case 'die holder':
      return dieHolderSentence(finding, press, unit);
  }
}

function stationSentence({ needed, ofAll }: FindingOf<'station'>, press: string): string {
  if (!ofAll) return `${press} has no ${needed}.`;
  return `No press has ${/^[aeiou]/.test(needed) ? 'an' : 'a'} ${needed}.`;
}

function limitWords({ sized, limit = 0 }: FindingOf<'press limit'>, unit: LengthUnit): string {
  if (sized.is === 'part' && sized.typed !== undefined)
    return withUnit(sizeLikeTyped(limit, sized.typed, unit), unit);
  return isMass(sized) ? formatMass(limit, unit) : size(limit, unit);
}

function minimumSentence(
  { sized, given, limit, from }: FindingOf<'shear minimum'>,
  press: string,
  unit: LengthUnit,
): string {
  const least = `${size(limit, unit)}${from === 'practice' ? ' by common practice' : ''}`;
  return sized === 'piece'
    ? `a piece ${size(given, unit)} long is too short to hold: ${press} needs ${least}.`
    : `${size(given, unit)} is smaller than ${press} can hold and cut, ${least}.`;
}

function smallestHoleSentence(
  { hole, thicknessMm, limit }: FindingOf<'smallest hole'>,
  unit: LengthUnit,
): string {
  const least = size(nextSizeMm(limit, unit), unit);
  return `a ${nameHole(hole, unit)} in metal ${size(thicknessMm, unit)} thick may burst the punch; the smallest to punch is ${least}. Drill it.`;
}

function bladeSentence(
  { grade, given, limit }: FindingOf<'blade material'>,
  press: string,
  unit: LengthUnit,
): string {
  const strength = (value: number) => formatQuantity({ kind: 'stress', value }, unit);
  const steel =
    given === undefined
      ? `${grade} has no upper tensile strength`
      : `${grade} comes with a tensile strength of up to ${strength(given)}`;
  return `${steel}; the blades of ${press} are for up to ${strength(limit)}.`;
}

function miterSentence(finding: FindingOf<'miter'>, press: string): string {
  const { on, why } = finding;
  if (why === 'one hand only') {
    const { leg, needs } = finding;
    const needed = needs === 'both' ? 'both hands' : `${needs}-hand ones`;
    return `${press} miters angles with the standing leg ${leg} only, which makes ${leg === 'down' ? 'right' : 'left'}-hand miters; the part needs ${needed}. Saw the miter.`;
  }
  if (why === 'over 45°') return `a miter over 45° is beyond the ${on} of ${press}.`;
  if (why === 'one leg only') return `the ${on} of ${press} miters one leg only; saw the miter.`;
  return `the ${on}${on === 'bar shear' ? '' : ` of ${press}`} cuts square only; saw the miter.`;
}

function veeSentence(
  { wantedMm, exact, onHandMm, forRadius }: FindingOf<'vee opening'>,
  press: string,
  unit: LengthUnit,
): string {
  const asked = `${size(wantedMm, unit)}${exact ? '' : ' or wider'}`;
  const onHand = onHandMm.map((mm) => formatLength(mm, unit)).join(', ');
  const why = forRadius ? ` ${radiusSentence(forRadius, unit)}` : '';
  return `${press} has no V opening of ${asked}; on hand: ${onHand} ${unit}.${why}`;
}

function radiusSentence(
  { leastMm, galvanized }: NonNullable<FindingOf<'vee opening'>['forRadius']>,
  unit: LengthUnit,
): string {
  return galvanized
    ? `A part that is galvanized after bending needs an inside radius of 3 × its thickness, ${size(leastMm, unit)}.`
    : `The grade needs an inside radius of ${size(leastMm, unit)}.`;
}

function legSentence(
  { bend, madeBefore, webMm, legMm, gapMm, halfMm }: FindingOf<'leg beside punch'>,
  press: string,
  unit: LengthUnit,
): string {
  const [low, high] = [Math.min(bend, madeBefore) + 1, Math.max(bend, madeBefore) + 1];
  const leg = `bend ${low} and bend ${high}: if both go the same way to 90°, the leg of ${size(legMm, unit)} beyond bend ${madeBefore + 1}`;
  const why =
    gapMm < -toleranceMm || halfMm === undefined
      ? `is longer than the ${size(webMm, unit)} between them and meets the punch`
      : `comes within ${size(gapMm, unit)} of the middle of the punch, under its half width on ${press}, ${size(halfMm, unit)}`;
  return `${leg} ${why}. Check it by hand.`;
}

function dieHolderSentence(
  { beside, given, limit = 0, group }: FindingOf<'die holder'>,
  press: string,
  unit: LengthUnit,
): string {
  const room = size(Math.max(given, 0), unit);
  return `${holeTitle(group)}: only ${room} from the hole to the ${beside}; ${press}'s die holder needs ${size(limit, unit)}.`;
}
