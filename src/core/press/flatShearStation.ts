import { flatBarShearForceN } from '../force/flatBarShear.js';
import { formatLength } from '../quantity/formatLength.js';
import type { Section } from '../section/section.js';
import type { Working } from '../working/working.js';
import type { Finding } from './finding.js';
import { limitOf, roundingShare, shareFinding, stationOf, valueOr, withinLimit } from './limit.js';
import { plateShareFinding } from './plateShare.js';
import type { Press } from './press.js';
import type { PressItemKey } from './pressItem.js';
import { defaultReferenceShearMPa } from './punchStation.js';
import type { ShearJob } from './shearStation.js';

type FlatJob = ShearJob<Extract<Section, { kind: 'flat' }>>;

const defaultDullBlade = 1.2;

interface PlatePoint {
  widthMm: number;
  thicknessMm: number;
}

/**
 * One cut of a flat bar or plate. A miter makes it wider (w / cos θ), which must fit the blade and a size on
 * the plate. The plate's two sizes are steps: up to the thickest bar's width its thickness holds, up to the
 * widest bar's width that bar's thickness. No size is ever raised for a weaker material.
 * Where the plate gives no sizes, the force with the dull-blade allowance is held against Shear force.
 * @returns findings; `use` is a share, 1 is full. Source: common practice, no source.
 */
export function flatShearFindings(press: Press, job: FlatJob, working?: Working): Finding[] {
  const station = stationOf(press, 'flatShear', working);
  if (station.missing) return station.findings;
  const widthMm = job.section.widthMm / Math.cos(job.miterRad);
  const what = `a cut ${formatLength(widthMm, job.unit)} ${job.unit} wide`;
  return [
    ...station.findings,
    ...withinLimit(
      press,
      { key: 'flatShearBladeLength', sizeMm: widthMm, what, meaning: 'width of the cut', unit: job.unit },
      working,
    ),
    ...capacityFindings(press, job, widthMm, what, working),
  ];
}

function capacityFindings(
  press: Press,
  job: FlatJob,
  widthMm: number,
  what: string,
  working?: Working,
): Finding[] {
  const rakeRad = limitOf(press, 'flatShearRake');
  if (typeof rakeRad !== 'number') return [rakeRad];
  const points = platePoints(press);
  if (!Array.isArray(points)) return [points];
  const reference = valueOr(press, 'referenceShear', defaultReferenceShearMPa);
  if (typeof reference !== 'number') return [reference];
  const { thicknessMm } = job.section;
  const rake = Number.isFinite(rakeRad) ? rakeRad : 0;
  const part = { widthMm, thicknessMm, shearStrengthMPa: job.shearStrengthMPa, rakeRad: rake };
  if (points.length === 0) return ratedForceFindings(press, flatBarShearForceN(part, working));
  const wideEnough = points.filter((point) => widthMm <= point.widthMm * (1 + roundingShare));
  const point = wideEnough.sort((a, b) => b.thicknessMm - a.thicknessMm)[0];
  if (!point) {
    const widest = Math.max(...points.map((each) => each.widthMm));
    return [
      tooBig(
        press,
        `${what} is over ${press.name}'s widest bar, ${formatLength(widest, job.unit)} ${job.unit}.`,
      ),
    ];
  }
  const plateSize = `${formatLength(point.widthMm, job.unit)} × ${formatLength(point.thicknessMm, job.unit)} ${job.unit}`;
  const plateForceN = flatBarShearForceN({ ...point, shearStrengthMPa: reference, rakeRad: rake });
  const forceN = flatBarShearForceN(part, working);
  const share = plateShareFinding(press, { forceN, plateForceN, station: 'flat shear', plateSize }, working);
  if (thicknessMm <= point.thicknessMm * (1 + roundingShare)) return [share];
  const note = `${formatLength(thicknessMm, job.unit)} ${job.unit} thick is over ${press.name}'s plate size ${plateSize}.`;
  return [tooBig(press, note), share];
}

function tooBig(press: Press, note: string): Finding {
  return { verdict: 'Too big', governs: `flat shear size of ${press.name}`, note };
}

/** The sizes on the plate; none where all are `none`; a finding where one is blank or unreadable. */
function platePoints(press: Press): PlatePoint[] | Finding {
  const pairs: [PressItemKey, PressItemKey][] = [
    ['flatShearWidestBar', 'flatShearWidestBarThickness'],
    ['flatShearThickestBarWidth', 'flatShearThickestBar'],
  ];
  const points: PlatePoint[] = [];
  for (const [widthKey, thicknessKey] of pairs) {
    const widthMm = limitOf(press, widthKey);
    const thicknessMm = limitOf(press, thicknessKey);
    if (typeof widthMm !== 'number') return widthMm;
    if (typeof thicknessMm !== 'number') return thicknessMm;
    if (Number.isFinite(widthMm) && Number.isFinite(thicknessMm)) points.push({ widthMm, thicknessMm });
  }
  return points;
}

/** Without sizes on the plate, the force with the dull-blade allowance against the rated force. */
function ratedForceFindings(press: Press, forceN: number): Finding[] {
  const rated = limitOf(press, 'shearForce');
  if (typeof rated !== 'number') return [rated];
  const dull = valueOr(press, 'flatShearDullBlade', defaultDullBlade);
  if (typeof dull !== 'number') return [dull];
  if (Number.isFinite(rated))
    return [shareFinding(press, (forceN * dull) / rated, forceN * dull, 'shear force')];
  const note = `${press.name} states neither sizes nor a force for its flat shear, so the cut was not checked.`;
  return [{ verdict: 'Not checked', governs: 'flat shear', note }];
}
