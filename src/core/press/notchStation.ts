import { notchForceN } from '../force/notch.js';
import { type NotchBites, notchBites } from '../force/notchBites.js';
import type { Notch } from '../force/notchCutLength.js';
import { InputError } from '../inputError.js';
import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';
import type { Working } from '../working/working.js';
import type { Finding } from './finding.js';
import { limitOf, stationOf, valueOr, withinLimit } from './limit.js';
import { plateShareFinding } from './plateShare.js';
import type { Press } from './press.js';
import { defaultReferenceShearMPa } from './punchStation.js';

export interface NotchJob extends Notch {
  thicknessMm: number;
  shearStrengthMPa: number;
  /** For the lengths in notes. */
  unit: LengthUnit;
}

/**
 * One notch against a press's notcher: station, thickness, bites, force. Width and depth on the plate are those of one
 * bite: a bigger notch is several. Share of rating: the worst bite's force over that of the plate's own notch, in an
 * edge and at the plate's reference strength, so that the plate's own notch in mild steel reads exactly 100 %.
 * @param press the press, its limits in mm
 * @param job the notch and the thickness in mm, shear strength in MPa
 * @param working collects the steps when given
 * @returns findings; `use` is a share, 1 is full
 * Source: common practice, no source.
 */
export function notchFindings(press: Press, job: NotchJob, working?: Working): Finding[] {
  const station = stationOf(press, 'notcher', working);
  if (station.missing) return station.findings;
  const { thicknessMm, unit } = job;
  const what = `thickness ${formatLength(thicknessMm, unit)} ${unit}`;
  const thickness = {
    key: 'notcherThickness',
    sizeMm: thicknessMm,
    what,
    meaning: 'thickness',
    unit,
  } as const;
  return [
    ...station.findings,
    ...withinLimit(press, thickness, working),
    ...forceFindings(press, job, working),
  ];
}

/** The bites of a notch with the press's own tool; findings where its size is not known, or bites cannot be made. */
export function notchBitesOnPress(press: Press, job: NotchJob, working?: Working): NotchBites | Finding[] {
  const toolWidthMm = limitOf(press, 'notcherWidth');
  const toolDepthMm = limitOf(press, 'notcherDepth');
  if (typeof toolWidthMm !== 'number' || typeof toolDepthMm !== 'number') {
    return [toolWidthMm, toolDepthMm].filter((limit) => typeof limit !== 'number');
  }
  try {
    return notchBites({ ...job, toolWidthMm, toolDepthMm }, working);
  } catch (error) {
    if (!(error instanceof InputError) || error.failure.argument !== 'Notch') throw error;
    const { problem, allowed } = error.failure;
    return [
      { verdict: 'Too big', governs: 'notch', note: `The notch on ${press.name}: ${problem} ${allowed}` },
    ];
  }
}

function forceFindings(press: Press, job: NotchJob, working?: Working): Finding[] {
  const bites = notchBitesOnPress(press, job, working);
  if (Array.isArray(bites)) return bites;
  const { forceN } = bites;
  const reference = valueOr(press, 'referenceShear', defaultReferenceShearMPa);
  if (typeof reference !== 'number') return [reference];
  const [widthMm, depthMm, thicknessMm] = [
    limitOf(press, 'notcherWidth'),
    limitOf(press, 'notcherDepth'),
    limitOf(press, 'notcherThickness'),
  ];
  // A blank size has its own finding already.
  if (typeof widthMm !== 'number' || typeof depthMm !== 'number' || typeof thicknessMm !== 'number')
    return [];
  const sizes = [widthMm, depthMm, thicknessMm];
  if (!sizes.every(Number.isFinite)) return [{ verdict: 'OK', governs: 'notcher', note: '', use: 0, forceN }];
  const plate = { widthMm, depthMm, thicknessMm, where: 'edge', shearStrengthMPa: reference } as const;
  const plateSize = `${sizes.map((mm) => formatLength(mm, job.unit)).join(' × ')} ${job.unit}`;
  const share = { forceN, plateForceN: notchForceN(plate), station: 'notcher', plateSize };
  return [plateShareFinding(press, share, working)];
}
