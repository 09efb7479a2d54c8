import { isBlank, type CellValue } from '../../quantity/cellValue.js';
import { nameKey } from '../../shop/table.js';

/** What names zinc but no bath of it after the work: paint, plating, sheet that came galvanized, and a denial. */
const noBath =
  /\b(?:no|not|non|without|cold|electro|pre|un)[- ]?(?:hot[- ]?dip\w*[- ]?)?galv\w*|\bgalv\w* (?:paint|primer|compound|spray)/g;
const bath = /\bgalv|\bh\.?d\.?g\b|\bhot[- ]?dip|\ba ?123\b|\biso 1461\b/;
const changesNothing =
  /^(?:none|no|n\/a|mill|mill finish|black|bare|raw|plain|self colou?r|unfinished|as rolled)$|\b(?:un)?paint|\bprim|\bblast|\bsandblast|\bshot ?blast|\bpowder|\bcoat|\benamel|\bepoxy|\boil|\bsp ?\d/;

/** What a finish means for the work: only a bath of zinc changes any of it. */
export type Finish = 'galvanized' | 'nothing' | 'unknown';

/** Reads a finish in the usual words; `unknown` where it is none of them. Common practice, no source. */
export function readFinish(value: CellValue): Finish {
  const text = nameKey(value);
  if (isBlank(text)) return 'nothing';
  const without = text.replace(noBath, ' ');
  if (bath.test(without)) return 'galvanized';
  return changesNothing.test(text) || without !== text ? 'nothing' : 'unknown';
}
