import type { PressFinding } from '../check/finding.js';
import type { PlateSize } from '../check/pressFact.js';
import { punchForceN } from '../force/punch.js';
import { cutPerimeterMm } from '../tooling/cutPerimeter.js';
import { type Hole, leastDimensionMm, punchDiagonalMm } from '../tooling/hole.js';
import { leastHoleMm } from '../tooling/leastHole.js';
import { forceValue, ratioValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { limitOf, pressSource, referenceShearMPa, roundingShare, valueOr, withinLimit } from './limit.js';
import type { Press } from './press.js';
import { shareFinding, unratedShare } from './share.js';
import { stationOf } from './stationOf.js';

export interface PunchJob {
  hole: Hole;
  thicknessMm: number;
  shearStrengthMPa: number;
  holeToThickness: number;
  punchAllowanceMPa: number;
  /** How far the punch goes into the die. */
  punchEntryMm: number;
}

export const usualWorkingGapMm = 6;

/**
 * One punched hole against a press's punch station: station, largest hole, stroke, smallest hole, force.
 *
 * Share of rating: F / punch force, and F / force of the plate's largest hole at its reference shear
 * strength, whichever is larger, so that the plate's own hole in mild steel reads exactly 100%.
 * @param press the press, its limits in mm and N
 * @param job hole and thickness in mm, strengths in MPa
 * @param working collects the steps when given
 * @returns findings, at least one; `use` is a share, 1 is full
 * Source: common practice, no source; force and smallest hole name their own.
 */
export function punchFindings(press: Press, job: PunchJob, working?: Working): PressFinding[] {
  const station = stationOf(press, 'punch', working);
  if (station.missing) return station.findings;
  const { hole } = job;
  const largest = {
    item: 'punchLargestHole',
    sized: { is: 'hole', hole },
    given: punchDiagonalMm(hole),
  } as const;
  return [
    ...station.findings,
    withinLimit(press, largest, working),
    strokeFinding(press, job, working),
    leastHoleFinding(press, job, working),
    ...forceFindings(press, job, working),
  ];
}

/** The stroke must pass the working gap and the work, and enter the die. */
function strokeFinding(
  press: Press,
  { thicknessMm, punchEntryMm }: PunchJob,
  working?: Working,
): PressFinding {
  const gapMm = valueOr(press, 'punchWorkingGap', usualWorkingGapMm);
  if (typeof gapMm !== 'number') return gapMm;
  const given = gapMm + thicknessMm + punchEntryMm;
  const sized = { is: 'gap, thickness and die entry' } as const;
  return withinLimit(press, { item: 'punchStroke', sized, given }, working);
}

function leastHoleFinding(press: Press, job: PunchJob, working?: Working): PressFinding {
  const limit = leastHoleMm(job, working);
  const held = leastDimensionMm(job.hole) >= limit * (1 - roundingShare);
  return {
    rule: 'smallest hole',
    outcome: held ? 'held' : 'failed',
    verdict: held ? 'OK' : 'Hole too small',
    press: press.name,
    hole: job.hole,
    thicknessMm: job.thicknessMm,
    limit,
  };
}

/** What 100% of the punch is; Infinity where the press states no limit. */
interface Rating {
  ratingN: number;
  plate?: PlateSize;
}

function forceFindings(press: Press, job: PunchJob, working?: Working): PressFinding[] {
  const forceN = punchForceN({ ...job, cutPerimeterMm: cutPerimeterMm(job.hole, working) }, working);
  const rated = ratedForce(press);
  const plate = plateRating(press);
  const unknown = [rated, plate].filter((rating) => 'rule' in rating);
  const [first, second] = [rated, plate].filter((rating): rating is Rating => !('rule' in rating));
  if (!first) return unknown;
  const rating = second && second.ratingN < first.ratingN ? second : first;
  const { ratingN } = rating;
  if (ratingN === Number.POSITIVE_INFINITY) return [...unknown, unratedShare(press, 'punch force', forceN)];
  const use = forceN / ratingN;
  working?.step({
    title: 'Share of rating',
    formula: 'use = F / R',
    values: [
      forceValue('F', 'punching force', forceN),
      forceValue('R', `rating of ${press.name}, punch`, ratingN),
    ],
    result: ratioValue('use', 'share of rating', use),
    source: pressSource,
  });
  return [...unknown, shareFinding(press, { operation: 'punch force', use, forceN, ...rating })];
}

function ratedForce(press: Press): Rating | PressFinding {
  const ratingN = limitOf(press, 'punchForce');
  return typeof ratingN === 'number' ? { ratingN } : ratingN;
}

/** The force of the plate's own hole at its reference strength; no limit where the plate states none. */
function plateRating(press: Press): Rating | PressFinding {
  const diameterMm = limitOf(press, 'punchLargestHole');
  const thicknessMm = limitOf(press, 'punchLargestHoleThickness');
  const strengthMPa = referenceShearMPa(press);
  if (typeof strengthMPa !== 'number') return strengthMPa;
  if (typeof thicknessMm !== 'number') return thicknessMm;
  if (typeof diameterMm !== 'number') return diameterMm;
  if (!Number.isFinite(diameterMm) || !Number.isFinite(thicknessMm)) {
    return { ratingN: Number.POSITIVE_INFINITY };
  }
  const ratingN = punchForceN({
    cutPerimeterMm: cutPerimeterMm({ shape: 'round', diameterMm }),
    thicknessMm,
    shearStrengthMPa: strengthMPa,
  });
  return { ratingN, plate: { sizesMm: [diameterMm, thicknessMm], strengthMPa } };
}
