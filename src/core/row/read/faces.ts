import type { LengthUnit } from '../../quantity/units.js';
import type { AnySection } from '../../section/section.js';
import { legProblem } from './legProblem.js';
import type { PartSide } from '../job/rowJob.js';

const plateSides = ['bottom', 'top'] as const;
const legSides = ['heel', 'toe'] as const;

/**
 * The long edges of a face: bottom and top of a plate or web, heel and toe of a leg or flange; of a channel without a face
 * all four. Undefined where the section is not known or has no such faces.
 */
export function sidesOf(
  section: AnySection | undefined,
  leg: string | undefined,
): readonly PartSide[] | undefined {
  if (section?.kind === 'flat') return plateSides;
  if (section?.kind === 'angle') return legSides;
  if (section?.kind !== 'channel') return undefined;
  if (leg === undefined) return [...plateSides, ...legSides];
  return leg.toLowerCase().includes('flange') ? legSides : plateSides;
}

/** What is wrong with the face that work is said to be on: a clause with how to write it. */
export function faceProblem(
  section: AnySection | undefined,
  leg: string,
  unit: LengthUnit,
): { problem: string; allowed: string } | undefined {
  if (section?.kind === 'flat') {
    return {
      problem: `'${leg}' is no face of ${section.designation}, which has one.`,
      allowed: 'Leave it out.',
    };
  }
  if (section?.kind === 'angle' && legProblem(section, leg, unit) !== undefined) {
    const allowed = "Write long leg, short leg or the leg's size.";
    return { problem: `'${leg}' is not a leg of ${section.designation}.`, allowed };
  }
  if (section?.kind === 'channel' && !/^(?:web|(?:(?:bottom|top) )?flange)$/.test(leg)) {
    return { problem: `'${leg}' is not part of a channel.`, allowed: 'Write web or flange.' };
  }
  return undefined;
}
