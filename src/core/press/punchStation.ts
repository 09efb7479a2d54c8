import { megapascalPerKsi } from '../quantity/units.js';
import { formatLength, nextSizeMm } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';
import { punchForceN } from '../force/punch.js';
import { cutPerimeterMm } from '../tooling/cutPerimeter.js';
import { describeHole, type Hole, leastDimensionMm, nameHole, punchDiagonalMm } from '../tooling/hole.js';
import { leastHoleMm } from '../tooling/leastHole.js';
import type { Working } from '../working/working.js';
import type { Finding } from './finding.js';
import {
  limitOf,
  pressSource,
  roundingShare,
  shareFinding,
  stationOf,
  valueOr,
  withinLimit,
} from './limit.js';
import type { Press } from './press.js';

export interface PunchJob {
  hole: Hole;
  thicknessMm: number;
  shearStrengthMPa: number;
  holeToThickness: number;
  punchAllowanceMPa: number;
  /** For the lengths in notes. */
  unit: LengthUnit;
}

/** Plate sizes stand for this shear strength where the press says nothing. Common practice, no source. */
export const defaultReferenceShearMPa = 50 * megapascalPerKsi;
const defaultWorkingGapMm = 6;
const dieEntryMm = 2;

/**
 * One punched hole against a press's punch station: station, largest hole, stroke, least hole, force.
 *
 * Share of rating: F / punch force, and F / force of the plate's largest hole at its reference shear
 * strength, whichever is larger, so that the plate's own hole in mild steel reads exactly 100 %.
 * @param press the press, its limits in mm and N
 * @param job hole and thickness in mm, strengths in MPa
 * @param working collects the steps when given
 * @returns findings, at least one; `use` is a share, 1 is full
 * Source: common practice, no source; force and least hole name their own.
 */
export function punchFindings(press: Press, job: PunchJob, working?: Working): Finding[] {
  const station = stationOf(press, 'punch', working);
  if (station.missing) return station.findings;
  const hole = `hole ${describeHole(job.hole, job.unit)}`;
  const largest = {
    key: 'punchLargestHole',
    sizeMm: punchDiagonalMm(job.hole),
    what: hole,
    meaning: 'largest dimension of the hole',
    unit: job.unit,
  } as const;
  return [
    ...station.findings,
    ...withinLimit(press, largest, working),
    ...strokeFindings(press, job, working),
    ...leastHoleFindings(job, working),
    ...forceFindings(press, job, working),
  ];
}

/** The stroke must pass the working gap and the work, and enter the die. */
function strokeFindings(press: Press, { thicknessMm, unit }: PunchJob, working?: Working): Finding[] {
  const gapMm = valueOr(press, 'punchWorkingGap', defaultWorkingGapMm);
  if (typeof gapMm !== 'number') return [gapMm];
  const sizeMm = gapMm + thicknessMm + dieEntryMm;
  const stroke = {
    key: 'punchStroke',
    sizeMm,
    what: `gap, thickness and die entry, ${formatLength(sizeMm, unit)} ${unit},`,
    meaning: 'gap, thickness and die entry',
    unit,
  } as const;
  return withinLimit(press, stroke, working);
}

function leastHoleFindings(job: PunchJob, working?: Working): Finding[] {
  const leastMm = leastHoleMm(job, working);
  if (leastDimensionMm(job.hole) >= leastMm * (1 - roundingShare)) return [];
  const { unit } = job;
  const thickness = `${formatLength(job.thicknessMm, unit)} ${unit}`;
  const least = `${formatLength(nextSizeMm(leastMm, unit), unit)} ${unit}`;
  const note = `a ${nameHole(job.hole, unit)} in metal ${thickness} thick may burst the punch; the least is ${least}; drill it.`;
  return [{ verdict: 'Hole too small', governs: 'least hole', note }];
}

function forceFindings(press: Press, job: PunchJob, working?: Working): Finding[] {
  const forceN = punchForceN({ ...job, cutPerimeterMm: cutPerimeterMm(job.hole, working) }, working);
  const rated = limitOf(press, 'punchForce');
  const plate = plateForceN(press);
  const unknown = [rated, plate].filter((rating) => typeof rating !== 'number');
  const known = [rated, plate].filter((rating) => typeof rating === 'number');
  if (known.length === 0) return unknown;
  const ratingN = Math.min(...known);
  if (ratingN === Number.POSITIVE_INFINITY) {
    return [...unknown, { verdict: 'OK', governs: 'punch force', note: '', use: 0, forceN }];
  }
  const use = forceN / ratingN;
  working?.step({
    title: 'Share of rating',
    formula: 'use = F / R',
    values: [
      { symbol: 'F', meaning: 'punching force', kind: 'force', value: forceN },
      { symbol: 'R', meaning: `rating of ${press.name}, punch`, kind: 'force', value: ratingN },
    ],
    result: { symbol: 'use', meaning: 'share of rating', kind: 'ratio', value: use },
    source: pressSource,
  });
  return [...unknown, shareFinding(press, use, forceN, 'punch force')];
}

/** The force of the plate's own hole at its reference strength; no limit where the plate states none. */
function plateForceN(press: Press): number | Finding {
  const diameterMm = limitOf(press, 'punchLargestHole');
  const thicknessMm = limitOf(press, 'punchLargestHoleThickness');
  const reference = valueOr(press, 'referenceShear', defaultReferenceShearMPa);
  if (typeof reference !== 'number') return reference;
  if (typeof thicknessMm !== 'number') return thicknessMm;
  if (typeof diameterMm !== 'number') return diameterMm;
  if (!Number.isFinite(diameterMm) || !Number.isFinite(thicknessMm)) return Number.POSITIVE_INFINITY;
  return punchForceN({
    cutPerimeterMm: cutPerimeterMm({ shape: 'round', diameterMm }),
    thicknessMm,
    shearStrengthMPa: reference,
  });
}
