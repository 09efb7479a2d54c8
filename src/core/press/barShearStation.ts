import { sectionShearForceN } from '../force/sectionShear.js';
import { formatLength } from '../quantity/formatLength.js';
import { sectionAreaMm2 } from '../section/area.js';
import type { Section } from '../section/section.js';
import type { Working } from '../working/working.js';
import type { Finding } from './finding.js';
import { limitOf, stationOf, valueOr, withinLimit } from './limit.js';
import { plateShareFinding } from './plateShare.js';
import type { Press } from './press.js';
import { defaultReferenceShearMPa } from './punchStation.js';
import type { ShearJob } from './shearStation.js';

type Bar = Extract<Section, { kind: 'round' | 'square' }>;

/**
 * One square cut of a round or square bar against the size on the plate. The shaped blades cut square only.
 * @returns findings; `use` is a share, 1 is full. Source: common practice, no source.
 */
export function barShearFindings(press: Press, job: ShearJob<Bar>, working?: Working): Finding[] {
  const station = stationOf(press, 'barShear', working);
  if (station.missing) return station.findings;
  if (job.miterRad > 0) {
    return [
      { verdict: 'No station', governs: 'miter', note: 'the bar shear cuts square only; saw the miter.' },
    ];
  }
  const { section, unit } = job;
  const round = section.kind === 'round';
  const key = round ? 'barShearRound' : 'barShearSquare';
  const sizeMm = round ? section.diameterMm : section.sideMm;
  const what = `${section.kind} ${formatLength(sizeMm, unit)} ${unit}`;
  return [
    ...station.findings,
    ...withinLimit(press, { key, sizeMm, what, meaning: `${section.kind} bar`, unit }, working),
    ...shareFindings(press, job, key, working),
  ];
}

function shareFindings(
  press: Press,
  job: ShearJob<Bar>,
  key: 'barShearRound' | 'barShearSquare',
  working?: Working,
): Finding[] {
  const forceN = sectionShearForceN({ ...job, areaMm2: sectionAreaMm2(job.section, working) }, working);
  const plateMm = limitOf(press, key);
  const reference = valueOr(press, 'referenceShear', defaultReferenceShearMPa);
  if (typeof reference !== 'number') return [reference];
  // A blank size has its own finding already.
  if (typeof plateMm !== 'number') return [];
  if (!Number.isFinite(plateMm)) return [{ verdict: 'OK', governs: 'bar shear', note: '', use: 0, forceN }];
  const plate: Bar =
    job.section.kind === 'round'
      ? { ...job.section, diameterMm: plateMm }
      : { ...job.section, sideMm: plateMm };
  const plateForceN = sectionShearForceN({
    areaMm2: sectionAreaMm2(plate),
    shearStrengthMPa: reference,
    miterRad: 0,
  });
  const plateSize = `${plate.kind} ${formatLength(plateMm, job.unit)} ${job.unit}`;
  return [plateShareFinding(press, { forceN, plateForceN, station: 'bar shear', plateSize }, working)];
}
