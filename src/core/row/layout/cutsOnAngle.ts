import type { RowFinding } from '../../check/rowFact.js';
import type { LengthUnit } from '../../quantity/units.js';
import { legRootMm } from '../../section/legRoot.js';
import type { AngleSection } from '../../section/section.js';
import type { PartPlace } from '../job/rowJob.js';
import { isNotchedOnPress } from '../job/needsPress.js';
import type { ReadyRow } from '../job/readyRow.js';
import { facesOfLeg } from './facesOfLeg.js';

/**
 * Notches and clips that a notcher cannot make in an angle: at the heel, where the other leg stands, and deeper from the
 * toe than the leg is flat. Source: geometry.
 */
export function cutsOnAngle(row: ReadyRow, unit: LengthUnit): RowFinding[] {
  const { section, notches, clips } = row;
  if (section.kind !== 'angle' || !isNotchedOnPress(row)) return [];
  return [
    ...(notches ? cutFindings(section, 'notch', notches.depthMm, notches.at, unit) : []),
    ...(clips ? cutFindings(section, 'corner clip', clips.acrossMm, clips.at, unit) : []),
  ];
}

function cutFindings(
  section: AngleSection,
  work: 'notch' | 'corner clip',
  depthMm: number,
  places: readonly PartPlace[] | undefined,
  unit: LengthUnit,
): RowFinding[] {
  const { designation } = section;
  const failed = {
    rule: 'cut on angle',
    outcome: 'failed',
    verdict: 'No station',
    work,
    designation,
  } as const;
  if (places?.some((place) => place.at !== 'end' && isHeel(place.side))) {
    return [{ ...failed, why: 'heel' }];
  }
  const flats = (places ?? [{ leg: undefined }]).map(({ leg }) => {
    const widths = facesOfLeg(section, leg, unit).map(({ widthMm }) => widthMm);
    return {
      most: Math.max(...widths) - legRootMm(section),
      least: Math.min(...widths) - legRootMm(section),
    };
  });
  const most = Math.min(...flats.map((flat) => flat.most));
  if (depthMm > most) return [{ ...failed, why: 'depth', givenMm: depthMm, limitMm: most }];
  const least = Math.min(...flats.map((flat) => flat.least));
  const open = { ...failed, outcome: 'open', verdict: 'Not checked' } as const;
  if (depthMm > least) return [{ ...open, why: 'depth', givenMm: depthMm, limitMm: least }];
  // Corners are clipped at the toes; a notch may be anywhere.
  return places || work === 'corner clip' ? [] : [{ ...open, why: 'heel' }];
}

function isHeel(side: string): boolean {
  return side === 'heel' || side === 'bottom';
}
