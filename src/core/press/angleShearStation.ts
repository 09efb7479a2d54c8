import { sectionShearForceN } from '../force/sectionShear.js';
import { formatLength } from '../quantity/formatLength.js';
import { radianPerDegree } from '../quantity/units.js';
import { sectionAreaMm2 } from '../section/area.js';
import type { Section } from '../section/section.js';
import type { Working } from '../working/working.js';
import type { Finding } from './finding.js';
import { limitOf, limitStep, roundingShare, stationOf, valueOr, withinLimit } from './limit.js';
import { plateShareFinding } from './plateShare.js';
import type { Press } from './press.js';
import { defaultReferenceShearMPa } from './punchStation.js';
import type { ShearJob } from './shearStation.js';

type Angle = Extract<Section, { kind: 'angle' }>;

const greatestMiterRad = 45 * radianPerDegree;
const squareCut = {
  leg: 'angleShearLegSquare',
  thickness: 'angleShearThicknessSquare',
  miterRad: 0,
  name: 'square',
} as const;
const miterCut = {
  leg: 'angleShearLeg45',
  thickness: 'angleShearThickness45',
  miterRad: greatestMiterRad,
  name: 'at 45°',
} as const;

/**
 * One cut of an angle. Any miter up to 45° is held to the plate's size at 45°; the longer leg and the
 * thickness must be within it, and the force of the oblique cut within that size's own. For the share, the
 * plate's angle has the part's root radius, so that the plate's size reads exactly 100 %.
 * @returns findings; `use` is a share, 1 is full. Source: common practice, no source.
 */
export function angleShearFindings(press: Press, job: ShearJob<Angle>, working?: Working): Finding[] {
  const station = stationOf(press, 'angleShear', working);
  if (station.missing) return station.findings;
  const { section, unit } = job;
  const miters = job.miterRad > 0 ? miterFindings(press, working) : [];
  if (miters.some((finding) => finding.verdict === 'No station')) return [...station.findings, ...miters];
  if (job.miterRad > greatestMiterRad * (1 + roundingShare)) {
    return [
      {
        verdict: 'Too big',
        governs: 'miter',
        note: `a miter over 45° is beyond the angle shear of ${press.name}.`,
      },
    ];
  }
  const plate = job.miterRad > 0 ? miterCut : squareCut;
  const legMm = Math.max(section.legAMm, section.legBMm);
  const leg = {
    key: plate.leg,
    sizeMm: legMm,
    what: `leg ${formatLength(legMm, unit)} ${unit}`,
    meaning: 'longer leg',
    unit,
  };
  const thickness = {
    key: plate.thickness,
    sizeMm: section.thicknessMm,
    what: `thickness ${formatLength(section.thicknessMm, unit)} ${unit}`,
    meaning: 'thickness',
    unit,
  };
  const sizes = [...withinLimit(press, leg, working), ...withinLimit(press, thickness, working)];
  return [...station.findings, ...miters, ...sizes, ...shareFindings(press, job, plate, working)];
}

/** Whether the angle shear miters at all: one leg, both, or neither. */
function miterFindings(press: Press, working?: Working): Finding[] {
  const legs = limitOf(press, 'angleShearLegsMitered');
  if (typeof legs !== 'number') return [legs];
  limitStep(
    working,
    press,
    'angleShearLegsMitered',
    { kind: 'count', value: 1, meaning: 'legs to miter' },
    '≤',
    legs === 0 ? 'No station' : 'OK',
  );
  const note = `the angle shear of ${press.name} cuts square only; saw the miter.`;
  return legs === 0 ? [{ verdict: 'No station', governs: 'miter', note }] : [];
}

function shareFindings(
  press: Press,
  job: ShearJob<Angle>,
  plate: typeof squareCut | typeof miterCut,
  working?: Working,
): Finding[] {
  const forceN = sectionShearForceN({ ...job, areaMm2: sectionAreaMm2(job.section, working) }, working);
  const legMm = limitOf(press, plate.leg);
  const thicknessMm = limitOf(press, plate.thickness);
  const reference = valueOr(press, 'referenceShear', defaultReferenceShearMPa);
  if (typeof reference !== 'number') return [reference];
  // A blank size has its own finding already; without a size there is nothing to hold a force against.
  if (typeof legMm !== 'number' || typeof thicknessMm !== 'number') return [];
  if (!Number.isFinite(legMm) || !Number.isFinite(thicknessMm)) {
    return [{ verdict: 'OK', governs: 'angle shear', note: '', use: 0, forceN }];
  }
  const areaMm2 = sectionAreaMm2({ ...job.section, legAMm: legMm, legBMm: legMm, thicknessMm });
  const plateForceN = sectionShearForceN({ areaMm2, shearStrengthMPa: reference, miterRad: plate.miterRad });
  const plateSize = `${formatLength(legMm, job.unit)} × ${formatLength(thicknessMm, job.unit)} ${job.unit} ${plate.name}`;
  return [plateShareFinding(press, { forceN, plateForceN, station: 'angle shear', plateSize }, working)];
}
