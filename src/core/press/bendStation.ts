import { bendForceN } from '../force/bend.js';
import type { Grade } from '../material/grade.js';
import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';
import { bendLimits } from '../tooling/bendLimits.js';
import { forceValue, lengthValue, ratioValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import type { Finding } from './finding.js';
import {
  governsOf,
  limitOf,
  pressSource,
  roundingShare,
  shareFinding,
  stationOf,
  withinLimit,
} from './limit.js';
import { type Press, pressValue } from './press.js';

export interface BendJob {
  lengthMm: number;
  thicknessMm: number;
  grade: Grade;
  /** Upper tensile strength of the grade. */
  tensileMPa: number;
  /** The opening asked for; the press's own by `veeRatio` when left out. */
  veeMm?: number;
  /** Opening as a multiple of the thickness. */
  veeRatio: number;
  /** For the lengths in notes. */
  unit: LengthUnit;
}

const sameOpeningMm = 0.5;

/**
 * One bend against a press's bending attachment: station, length, V opening on hand, force against Punch force.
 * Without an opening asked for, the smallest on hand is taken that is no narrower than the ratio asks.
 * @param press the press, its limits in mm and N
 * @param job length and thickness in mm, strength in MPa
 * @param working collects the steps when given
 * @returns findings; `use` is a share, 1 is full
 * Source: common practice, no source; the force names its own.
 */
export function bendFindings(press: Press, job: BendJob, working?: Working): Finding[] {
  const station = stationOf(press, 'bend', working);
  if (station.missing) return station.findings;
  const { lengthMm, unit } = job;
  const what = `a bend ${formatLength(lengthMm, unit)} ${unit} long`;
  const length = { key: 'bendLength', sizeMm: lengthMm, what, meaning: 'length of the bend', unit } as const;
  const { veeMm, finding } = bendVee(press, job);
  const findings = [
    ...station.findings,
    ...withinLimit(press, length, working),
    ...(finding ? [finding] : []),
  ];
  if (veeMm === undefined) return findings;
  working?.step({
    title: 'V opening',
    formula: job.veeMm === undefined ? 'V ≥ k · t, of those on hand' : 'V as given',
    values: [
      ...(job.veeMm === undefined ? [ratioValue('k', 'V opening ratio', job.veeRatio)] : []),
      lengthValue('t', 'thickness', job.thicknessMm),
    ],
    result: lengthValue('V', 'V opening', veeMm),
    source: pressSource,
  });
  bendLimits({ ...job, veeMm }, working);
  return [...findings, ...forceFindings(press, bendForceN({ ...job, veeMm }, working), working)];
}

/** The opening a bend is made in; a finding where it is not on hand, or what is on hand is not known. */
export function bendVee(press: Press, job: BendJob): { veeMm?: number; finding?: Finding } {
  const wantedMm = job.veeMm ?? job.veeRatio * job.thicknessMm;
  const openings = pressValue(press, 'bendVeeOpenings');
  if (openings.state === 'none') return { veeMm: wantedMm };
  if (openings.state !== 'list') {
    const known = limitOf(press, 'bendVeeOpenings');
    return typeof known === 'number' ? { veeMm: wantedMm } : { veeMm: wantedMm, finding: known };
  }
  const { values } = openings;
  const fitting =
    job.veeMm === undefined
      ? values.find((opening) => opening >= wantedMm * (1 - roundingShare))
      : values.find((opening) => Math.abs(opening - wantedMm) < sameOpeningMm);
  if (fitting !== undefined) return { veeMm: fitting };
  const size = (mm: number) => formatLength(mm, job.unit);
  const asked =
    job.veeMm === undefined ? `${size(wantedMm)} ${job.unit} or wider` : `${size(wantedMm)} ${job.unit}`;
  const note = `${press.name} has no V opening of ${asked}; on hand: ${values.map(size).join(', ')} ${job.unit}.`;
  return { finding: { verdict: 'No tool', governs: governsOf('bendVeeOpenings'), note } };
}

function forceFindings(press: Press, forceN: number, working?: Working): Finding[] {
  const rated = limitOf(press, 'punchForce');
  if (typeof rated !== 'number') return [rated];
  if (!Number.isFinite(rated)) return [{ verdict: 'OK', governs: 'bend force', note: '', use: 0, forceN }];
  const use = forceN / rated;
  working?.step({
    title: 'Share of rating',
    formula: 'use = F / R',
    values: [
      forceValue('F', 'bending force', forceN),
      forceValue('R', `Punch force of ${press.name}`, rated),
    ],
    result: ratioValue('use', 'share of rating', use),
    source: pressSource,
  });
  return [shareFinding(press, use, forceN, 'bend force')];
}
