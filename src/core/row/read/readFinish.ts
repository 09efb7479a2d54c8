import { isBlank, type CellValue } from '../../quantity/cellValue.js';
import { nameKey } from '../../shop/table.js';

const bathWords = String.raw`hot[- ]?dip\w*(?:[- ]galv\w*)?|galv\w*|h\.?d\.?g\b|h\.?d\.? galv\w*`;
/** What names zinc but no bath of it after the work: paint, sheet that came galvanized, bolts, and a denial. */
const noBath = new RegExp(
  [
    String.raw`(?<!\p{L})(?:no|not|non|without|w/o|except|cold|electro|pre|un|galvanisch|nicht)[-.]? ?(?:${bathWords}|verzinkt)`,
    String.raw`(?<!\p{L})galv\w* (?:paint|primer|compound|spray|sheet|bolts?|fasteners?|hardware)\b`,
    String.raw`(?<!\p{L})(?:galvalume|galvanneal\w*)`,
  ].join('|'),
  'gu',
);
const bath = new RegExp(
  String.raw`(?<!\p{L})(?:${bathWords}|a ?123\b|iso 1461\b|(?:feuer|thermisch )?verzink(?:t|en)?|verz\b|vz\b|fvz\b|duplex|tzn\b|t zn\b)`,
  'u',
);
const changesNothing =
  /^(?:none|no|n\/a|mill|mill finish|black|bare|raw|plain|self colou?r|unfinished|as rolled|walzroh|roh|blank|schwarz|unbehandelt|onbehandeld|zwart)$|^(?:ral|ncs) ?\d|grundier|lackier|gestrichen|pulver|entgratet|gestrahlt|gegrond|gelakt|geschilderd|gemenied|gestraald|poeder|ontbraamd|anstrich|\b(?:un)?paint|\bprim|\bblast|\bsandblast|\bshot ?blast|\bpowder|\bcoat|\benamel|\bepoxy|\boil|\bsp ?\d/;

/** What a finish means for the work: only a bath of zinc changes any of it. */
export type Finish = 'galvanized' | 'nothing' | 'unknown';

const yes = new Set(['yes', 'y', 'ja', 'j', 'oui', 'sí', 'si', 'true', 'x', '✓']);
/** Whether a cell only says yes, or is ticked. */
export const saysYes = (value: CellValue): boolean => yes.has(nameKey(value));
const no = new Set(['no', 'n', 'nein', 'nee', 'non', 'false']);
const asksBath = /galv|hdg|verzink/i;

/** Reads a cell below a heading that asks for a bath, `Galvanized`, `verzinkt`: yes or no say it all there. */
export function readFinishUnder(heading: string): (value: CellValue) => Finish {
  if (!asksBath.test(heading)) return readFinish;
  return (value) => {
    const word = nameKey(value);
    if (saysYes(value)) return 'galvanized';
    return no.has(word) ? 'nothing' : readFinish(value);
  };
}

/** Reads a finish in the usual words; `unknown` where it is none of them. Common practice, no source. */
export function readFinish(value: CellValue): Finish {
  const text = nameKey(value);
  if (isBlank(text)) return 'nothing';
  const without = text.replace(noBath, ' ');
  if (bath.test(without)) return 'galvanized';
  return changesNothing.test(text) || without !== text ? 'nothing' : 'unknown';
}
