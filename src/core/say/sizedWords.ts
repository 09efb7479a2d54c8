import type { FindingOf } from '../check/finding.js';
import { plainText } from '../quantity/cellValue.js';
import { formatMass } from '../quantity/formatMass.js';
import type { LengthUnit } from '../quantity/units.js';
import { describeHole, type Hole, nameHole } from '../tooling/hole.js';
import { holeTitle } from '../row/job/rowJob.js';
import { size } from './sizes.js';

/** What has a size that is checked against a limit, with the size: `thickness 1/2 in`, `a cut 12 in wide`. */
export function sizedWords({ sized, given, group }: FindingOf<'press limit'>, unit: LengthUnit): string {
  switch (sized.is) {
    case 'hole':
      return holeWords(sized.hole, given, unit);
    case 'gap, thickness and die entry':
      return `${sized.is}, ${size(given, unit)},`;
    case 'cut':
      return `a cut ${size(given, unit)} wide`;
    case 'rip':
      return `a rip ${size(given, unit)} long, since plates are cut from sheet,`;
    case 'bend':
      return `a bend ${size(given, unit)} long`;
    case 'part':
      return `a part ${sized.typed === undefined ? size(given, unit) : typedSize(sized.typed, unit)} long`;
    case 'bar':
      return `the bar it is cut from, ${size(given, unit)} long,`;
    case 'bar mass':
      return `the bar it is cut from, ${formatMass(given, unit)},`;
    case 'mass':
      return `a part of ${formatMass(given, unit)}`;
    case 'hole to nearer edge':
      return `${holeTitle(group)} at ${size(given, unit)} from the nearer edge`;
    case 'hole to toe':
      return `${holeTitle(group)}: from the hole to the toe`;
    case 'part below the die':
      return `the part hanging below the die, ${size(given, unit)},`;
    case 'leg':
    case 'thickness':
    case 'round':
    case 'square':
    case 'corner clip':
      return `${sized.is} ${size(given, unit)}`;
  }
}

/** What of a hole is checked against the largest: of one with corners the diagonal. */
function holeWords(hole: Hole, given: number, unit: LengthUnit): string {
  if (hole.shape === 'round') return `hole ${describeHole(hole, unit)}`;
  const name = nameHole(hole, unit);
  return hole.shape === 'slot' ? name : `the diagonal of the ${name}, ${size(given, unit)},`;
}

/** A size as it was typed, with the shop's unit where it has none of its own. */
function typedSize(typed: string, unit: LengthUnit): string {
  const text = plainText(typed);
  return /^[\d .,/-]+$/.test(text) ? `${text} ${unit}` : text;
}
