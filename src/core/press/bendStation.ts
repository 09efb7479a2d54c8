import type { PressFinding } from '../check/finding.js';
import { bendForceN } from '../force/bend.js';
import type { Grade } from '../material/grade.js';
import { bendLimits } from '../tooling/bendLimits.js';
import { forceValue, ratioValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { bendVee } from './bendVee.js';
import { limitOf, pressSource, withinLimit } from './limit.js';
import type { Press } from './press.js';
import { shareFinding, unratedShare } from './share.js';
import { stationOf } from './stationOf.js';

export interface BendJob {
  lengthMm: number;
  thicknessMm: number;
  grade: Grade;
  /** Upper tensile strength of the grade. */
  tensileMPa: number;
  /** The part is hot-dip galvanized after bending. */
  galvanized?: boolean;
  /** The bend line runs along the rolling direction; it asks for a larger radius. */
  alongRolling?: boolean;
  /** The opening asked for; where left out, the press's own by `veeRatio` and the least inside radius. */
  veeMm?: number;
  /** Opening as a multiple of the thickness. */
  veeRatio: number;
}

/**
 * One bend against a press's bending attachment: station, length, V opening on hand, force against Punch force.
 * Without an opening asked for, the smallest on hand is taken that is no narrower than the ratio and the least inside
 * radius ask.
 * @param press the press, its limits in mm and N
 * @param job length and thickness in mm, strength in MPa
 * @param working collects the steps when given
 * @returns findings; `use` is a share, 1 is full
 * Source: common practice, no source; the force names its own.
 */
export function bendFindings(press: Press, job: BendJob, working?: Working): PressFinding[] {
  const station = stationOf(press, 'bend', working);
  if (station.missing) return station.findings;
  const length = { item: 'bendLength', sized: { is: 'bend' }, given: job.lengthMm } as const;
  const within = withinLimit(press, length, working);
  const { veeMm, finding } = bendVee(press, job, working);
  const findings = [...station.findings, within, finding];
  if (veeMm === undefined) return findings;
  bendLimits({ ...job, veeMm }, working);
  return [...findings, forceFinding(press, bendForceN({ ...job, veeMm }, working), working)];
}

function forceFinding(press: Press, forceN: number, working?: Working): PressFinding {
  const ratingN = limitOf(press, 'punchForce');
  if (typeof ratingN !== 'number') return ratingN;
  if (!Number.isFinite(ratingN)) return unratedShare(press, 'bend force', forceN);
  const use = forceN / ratingN;
  working?.step({
    title: 'Share of rating',
    formula: 'use = F / R',
    values: [
      forceValue('F', 'bending force', forceN),
      forceValue('R', `Punch force of ${press.name}`, ratingN),
    ],
    result: ratioValue('use', 'share of rating', use),
    source: pressSource,
  });
  return shareFinding(press, { operation: 'bend force', use, forceN, ratingN });
}
