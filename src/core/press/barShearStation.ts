import type { PressFinding } from '../check/finding.js';
import { sectionShearForceN } from '../force/sectionShear.js';
import { sectionAreaMm2 } from '../section/area.js';
import type { Section } from '../section/section.js';
import type { Working } from '../working/working.js';
import { limitOf, referenceShearMPa, withinLimit } from './limit.js';
import { plateShareFinding } from './plateShare.js';
import type { Press } from './press.js';
import { unratedShare } from './share.js';
import type { ShearJob } from './shearStation.js';
import { stationOf } from './stationOf.js';

type Bar = Extract<Section, { kind: 'round' | 'square' }>;

/**
 * One square cut of a round or square bar against the size on the plate. The shaped blades cut square only.
 * @returns findings; `use` is a share, 1 is full. Source: common practice, no source.
 */
export function barShearFindings(press: Press, job: ShearJob<Bar>, working?: Working): PressFinding[] {
  const station = stationOf(press, 'barShear', working);
  if (station.missing) return station.findings;
  if (job.miterRad > 0) {
    return [
      {
        rule: 'miter',
        outcome: 'failed',
        verdict: 'No station',
        press: press.name,
        on: 'bar shear',
        why: 'square only',
      },
    ];
  }
  const { section } = job;
  const round = section.kind === 'round';
  const item = round ? 'barShearRound' : 'barShearSquare';
  const given = round ? section.diameterMm : section.sideMm;
  return [
    ...station.findings,
    withinLimit(press, { item, sized: { is: section.kind }, given }, working),
    ...shareFindings(press, job, item, working),
  ];
}

function shareFindings(
  press: Press,
  job: ShearJob<Bar>,
  item: 'barShearRound' | 'barShearSquare',
  working?: Working,
): PressFinding[] {
  const forceN = sectionShearForceN({ ...job, areaMm2: sectionAreaMm2(job.section, working) }, working);
  const plateMm = limitOf(press, item);
  const reference = referenceShearMPa(press);
  if (typeof reference !== 'number') return [reference];
  // A blank size has its own finding already.
  if (typeof plateMm !== 'number') return [];
  if (!Number.isFinite(plateMm)) return [unratedShare(press, 'bar shear', forceN)];
  const own: Bar =
    job.section.kind === 'round'
      ? { ...job.section, diameterMm: plateMm }
      : { ...job.section, sideMm: plateMm };
  const plateForceN = sectionShearForceN({
    areaMm2: sectionAreaMm2(own),
    shearStrengthMPa: reference,
    miterRad: 0,
  });
  const plate = { sizesMm: [plateMm], cut: `${own.kind} bar`, strengthMPa: reference } as const;
  return [plateShareFinding(press, { operation: 'bar shear', forceN, plateForceN, plate }, working)];
}
