import type { PressFinding } from '../check/finding.js';
import { sectionShearForceN } from '../force/sectionShear.js';
import { radianPerDegree } from '../quantity/units.js';
import { sectionAreaMm2 } from '../section/area.js';
import type { Section } from '../section/section.js';
import type { Working } from '../working/working.js';
import { limitOf, limitStep, referenceShearMPa, roundingShare, withinLimit } from './limit.js';
import { plateShareFinding } from './plateShare.js';
import type { Press } from './press.js';
import { unratedShare } from './share.js';
import type { ShearJob } from './shearStation.js';
import { stationOf } from './stationOf.js';

type Angle = Extract<Section, { kind: 'angle' }>;

const greatestMiterRad = 45 * radianPerDegree;
const squareCut = {
  leg: 'angleShearLegSquare',
  thickness: 'angleShearThicknessSquare',
  miterRad: 0,
  cut: 'square',
} as const;
const miterCut = {
  leg: 'angleShearLeg45',
  thickness: 'angleShearThickness45',
  miterRad: greatestMiterRad,
  cut: 'at 45°',
} as const;

/**
 * One cut of an angle. Any miter up to 45° is held to the plate's size at 45°; the longer leg and the
 * thickness must be within it, and the force of the oblique cut within that size's own. For the share, the
 * plate's angle has the part's root radius, so that the plate's size reads exactly 100%.
 * @returns findings; `use` is a share, 1 is full. Source: common practice, no source.
 */
export function angleShearFindings(press: Press, job: ShearJob<Angle>, working?: Working): PressFinding[] {
  const station = stationOf(press, 'angleShear', working);
  if (station.missing) return station.findings;
  const { section, miterRad } = job;
  const mitered = miterRad > 0;
  const legs = mitered ? [legsFinding(press, working)] : [];
  if (legs.some((finding) => finding.outcome === 'failed')) return [...station.findings, ...legs];
  const angle = mitered ? [miterAngleFinding(press, miterRad)] : [];
  if (angle.some((finding) => finding.outcome === 'failed')) return angle;
  const plate = mitered ? miterCut : squareCut;
  const leg = {
    item: plate.leg,
    sized: { is: 'leg' },
    given: Math.max(section.legAMm, section.legBMm),
  } as const;
  const thickness = {
    item: plate.thickness,
    sized: { is: 'thickness' },
    given: section.thicknessMm,
  } as const;
  return [
    ...station.findings,
    ...legs,
    ...angle,
    withinLimit(press, leg, working),
    withinLimit(press, thickness, working),
    ...shareFindings(press, job, plate, working),
  ];
}

/** Whether the angle shear miters at all: one leg, both, or neither. */
function legsFinding(press: Press, working?: Working): PressFinding {
  const legs = limitOf(press, 'angleShearLegsMitered');
  if (typeof legs !== 'number') return legs;
  const verdict = legs === 0 ? 'No station' : 'OK';
  limitStep(
    working,
    press,
    'angleShearLegsMitered',
    { kind: 'count', value: 1, meaning: 'legs to miter' },
    '≤',
    verdict,
  );
  const outcome = legs === 0 ? 'failed' : 'held';
  return { rule: 'miter', outcome, verdict, press: press.name, on: 'angle shear', why: 'square only' };
}

function miterAngleFinding(press: Press, miterRad: number): PressFinding {
  const held = miterRad <= greatestMiterRad * (1 + roundingShare);
  return {
    rule: 'miter',
    outcome: held ? 'held' : 'failed',
    verdict: held ? 'OK' : 'Too big',
    press: press.name,
    on: 'angle shear',
    why: 'over 45°',
  };
}

function shareFindings(
  press: Press,
  job: ShearJob<Angle>,
  { leg, thickness, miterRad, cut }: typeof squareCut | typeof miterCut,
  working?: Working,
): PressFinding[] {
  const forceN = sectionShearForceN({ ...job, areaMm2: sectionAreaMm2(job.section, working) }, working);
  const legMm = limitOf(press, leg);
  const thicknessMm = limitOf(press, thickness);
  const reference = referenceShearMPa(press);
  if (typeof reference !== 'number') return [reference];
  // A blank size has its own finding already; without a size there is nothing to hold a force against.
  if (typeof legMm !== 'number' || typeof thicknessMm !== 'number') return [];
  if (!Number.isFinite(legMm) || !Number.isFinite(thicknessMm)) {
    return [unratedShare(press, 'angle shear', forceN)];
  }
  const areaMm2 = sectionAreaMm2({ ...job.section, legAMm: legMm, legBMm: legMm, thicknessMm });
  const plateForceN = sectionShearForceN({ areaMm2, shearStrengthMPa: reference, miterRad });
  const plate = { sizesMm: [legMm, thicknessMm], cut, strengthMPa: reference };
  return [plateShareFinding(press, { operation: 'angle shear', forceN, plateForceN, plate }, working)];
}
