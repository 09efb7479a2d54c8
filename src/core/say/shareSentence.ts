import type { ShareFinding } from '../check/finding.js';
import { formatQuantity } from '../quantity/formatQuantity.js';
import type { LengthUnit } from '../quantity/units.js';
import { nameHole } from '../tooling/hole.js';
import { percent, percentBeside } from './percent.js';
import { size, sizes } from './sizes.js';

/** What a share of a rating says where it is over, or near the limit. */
export function shareSentence(finding: ShareFinding, unit: LengthUnit): string {
  const { operation, use, shareToUse, press = 'the press', outcome } = finding;
  const share = `${operation} is ${percentBeside(use, [1, shareToUse])} of ${press}'s rating`;
  const above = outcome === 'failed' ? '' : `, above the ${percent(shareToUse)} the shop uses`;
  const full = fullWords(finding, unit);
  return `${share}${above}${full === undefined ? '' : `; 100% is ${full}`}.`;
}

/** What 100% is: the size on the plate, or the rated force. */
function fullWords({ operation, ratingN, plate }: ShareFinding, unit: LengthUnit): string | undefined {
  if (plate) {
    const strength = formatQuantity({ kind: 'stress', value: plate.strengthMPa }, unit);
    return `the rated ${plateWords(operation, plate, unit)} at ${strength}`;
  }
  if (operation !== 'punch force' || ratingN === undefined) return undefined;
  return `the rated punch force, ${formatQuantity({ kind: 'force', value: ratingN }, unit)}`;
}

function plateWords(
  operation: ShareFinding['operation'],
  { sizesMm, cut }: NonNullable<ShareFinding['plate']>,
  unit: LengthUnit,
): string {
  const [first = 0, second = 0] = sizesMm;
  switch (operation) {
    case 'punch force':
      return `${nameHole({ shape: 'round', diameterMm: first }, unit)} through ${size(second, unit)}`;
    case 'angle shear':
      return `angle ${sizes(sizesMm, unit)}, cut ${cut ?? 'square'},`;
    case 'bar shear':
      return `${size(first, unit)} ${cut ?? 'bar'}`;
    case 'notcher':
    case 'corner clip':
      return `${sizes(sizesMm, unit)} notch`;
    case 'flat shear':
    case 'shear force':
    case 'bend force':
      return sizes(sizesMm, unit);
  }
}
