import type { LengthUnit } from '../../quantity/units.js';
import type { AnySection } from '../../section/section.js';
import { facesOfLeg } from '../layout/facesOfLeg.js';

/** What is wrong with the leg a row names: undefined where the section has it, or has no legs to name. */
export function legProblem(
  section: AnySection,
  leg: string | undefined,
  unit: LengthUnit,
): string | undefined {
  if (leg === undefined || (section.kind !== 'angle' && section.kind !== 'channel')) return undefined;
  if (facesOfLeg(section, leg, unit).length > 0) return undefined;
  if (section.kind === 'angle' && leg.toLowerCase() === 'both') {
    return 'a group of holes is in one leg. Write long or short, and give the holes in the other leg as a second group.';
  }
  return section.kind === 'channel'
    ? `'${leg}' is not part of a channel. Write web or flange.`
    : `'${leg}' is not a leg of ${section.designation}. Write long, short or the leg's size.`;
}
