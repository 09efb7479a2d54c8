import type { PressFinding } from '../check/finding.js';
import { flatBarShearForceN } from '../force/flatBarShear.js';
import type { Section } from '../section/section.js';
import type { Working } from '../working/working.js';
import { limitOf, referenceShearMPa, roundingShare, valueOr, withinLimit } from './limit.js';
import { plateShareFinding } from './plateShare.js';
import type { Press } from './press.js';
import type { PressItemKey } from './item/pressItem.js';
import { shareFinding } from './share.js';
import type { ShearJob } from './shearStation.js';
import { stationOf } from './stationOf.js';

type FlatJob = ShearJob<Extract<Section, { kind: 'flat' }>>;

const usualDullBlade = 1.2;

interface PlatePoint {
  widthMm: number;
  thicknessMm: number;
}

/**
 * One cut of a flat bar or plate. A miter makes it wider (w / cos θ), which must fit the blade and a size on
 * the plate. The plate's two sizes are steps: up to the thickest bar's width its thickness holds, up to the
 * widest bar's width that bar's thickness. No size is ever raised for a weaker material.
 * Where the plate gives no sizes, the force with the dull-blade allowance is checked against Shear force.
 * @returns findings; `use` is a share, 1 is full. Source: common practice, no source.
 */
export function flatShearFindings(press: Press, job: FlatJob, working?: Working): PressFinding[] {
  const station = stationOf(press, 'flatShear', working);
  if (station.missing) return station.findings;
  const widthMm = job.section.widthMm / Math.cos(job.miterRad);
  const blade = { item: 'flatShearBladeLength', sized: { is: 'cut' }, given: widthMm } as const;
  return [
    ...station.findings,
    withinLimit(press, blade, working),
    ...capacityFindings(press, job, widthMm, working),
  ];
}

function capacityFindings(press: Press, job: FlatJob, widthMm: number, working?: Working): PressFinding[] {
  const rakeRad = limitOf(press, 'flatShearRake');
  if (typeof rakeRad !== 'number') return [rakeRad];
  const points = platePoints(press);
  if (!Array.isArray(points)) return [points];
  const reference = referenceShearMPa(press);
  if (typeof reference !== 'number') return [reference];
  const { thicknessMm } = job.section;
  const rake = Number.isFinite(rakeRad) ? rakeRad : 0;
  const part = { widthMm, thicknessMm, shearStrengthMPa: job.shearStrengthMPa, rakeRad: rake };
  if (points.length === 0) return [ratedForceFinding(press, flatBarShearForceN(part, working))];
  const point = pointFor(points, widthMm);
  const width = widthFinding(press, widthMm, points, point !== undefined);
  if (!point) return [width];
  const plateForceN = flatBarShearForceN({ ...point, shearStrengthMPa: reference, rakeRad: rake });
  const forceN = flatBarShearForceN(part, working);
  const plate = { sizesMm: [point.widthMm, point.thicknessMm], strengthMPa: reference };
  return [
    width,
    thicknessFinding(press, thicknessMm, point),
    plateShareFinding(press, { operation: 'flat shear', forceN, plateForceN, plate }, working),
  ];
}

/** The thickest size on the plate that is wide enough. */
function pointFor(points: readonly PlatePoint[], widthMm: number): PlatePoint | undefined {
  const wideEnough = points.filter((point) => widthMm <= point.widthMm * (1 + roundingShare));
  return wideEnough.sort((a, b) => b.thicknessMm - a.thicknessMm)[0];
}

function widthFinding(
  press: Press,
  given: number,
  points: readonly PlatePoint[],
  held: boolean,
): PressFinding {
  const limit = Math.max(...points.map((each) => each.widthMm));
  return { rule: 'widest bar', press: press.name, given, limit, ...ended(held) };
}

function thicknessFinding(press: Press, given: number, plate: PlatePoint): PressFinding {
  const held = given <= plate.thicknessMm * (1 + roundingShare);
  return { rule: 'plate thickness', press: press.name, given, plate, ...ended(held) };
}

function ended(held: boolean) {
  return held
    ? ({ outcome: 'held', verdict: 'OK' } as const)
    : ({ outcome: 'failed', verdict: 'Too big' } as const);
}

/** The sizes on the plate; none where all are `none`; a finding where one is blank or unreadable. */
function platePoints(press: Press): PlatePoint[] | PressFinding {
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
function ratedForceFinding(press: Press, bladeForceN: number): PressFinding {
  const ratingN = limitOf(press, 'shearForce');
  if (typeof ratingN !== 'number') return ratingN;
  const dull = valueOr(press, 'flatShearDullBlade', usualDullBlade);
  if (typeof dull !== 'number') return dull;
  const forceN = bladeForceN * dull;
  if (Number.isFinite(ratingN)) {
    return shareFinding(press, { operation: 'shear force', use: forceN / ratingN, forceN, ratingN });
  }
  return {
    rule: 'nothing stated',
    outcome: 'open',
    verdict: 'Not checked',
    press: press.name,
    of: 'flat shear',
  };
}
