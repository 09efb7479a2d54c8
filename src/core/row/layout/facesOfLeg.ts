import { ifRead } from '../../inputError.js';
import { toleranceMm } from '../../part/tolerance.js';
import { readLength } from '../../quantity/readLength.js';
import type { LengthUnit } from '../../quantity/units.js';
import type { AnySection } from '../../section/section.js';
import { type FaceSize, facesOf } from '../job/faces.js';

const sameSizeMm = 0.5;

/**
 * The faces that the text of a Leg cell may mean: `long`, `short` or its size of an angle's legs, `web` or `flange` of
 * a channel, every face where the cell is blank. None for a text that the section has no face for.
 */
export function facesOfLeg(
  section: AnySection,
  leg: string | undefined,
  unit: LengthUnit,
): readonly FaceSize[] {
  const faces = facesOf(section);
  if (leg === undefined || section.kind === 'flat') return faces;
  const word = leg.trim().toLowerCase();
  if (section.kind === 'channel') return faces.filter(({ id }) => id.split(' ')[0] === word);
  if (word === 'long') return faces.slice(0, 1);
  if (word === 'short') return faces.slice(1);
  const legMm = lengthOrNone(leg, unit);
  return faces.filter(({ widthMm }) => legMm !== undefined && Math.abs(widthMm - legMm) < sameSizeMm);
}

/** Drawings round both distances. Common practice, no source. */
const roundingMm: Record<LengthUnit, number> = { in: 25.4 / 16, mm: 1.5 };

/** Whether a distance from the heel and one from the toe add up to the width of a leg. */
export function isAsWide(widthMm: number, sumMm: number, unit: LengthUnit): boolean {
  return Math.abs(widthMm - sumMm) <= roundingMm[unit] + toleranceMm;
}

function lengthOrNone(text: string, unit: LengthUnit): number | undefined {
  return ifRead(() => readLength(text, 'Leg', unit, 'leg'));
}
