import { cornerClipForceN } from '../force/cornerClip.js';
import { notchForceN } from '../force/notch.js';
import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';
import type { Working } from '../working/working.js';
import type { Finding } from './finding.js';
import { limitOf, stationOf, valueOr, withinLimit } from './limit.js';
import { plateShareFinding } from './plateShare.js';
import type { Press } from './press.js';
import { defaultReferenceShearMPa } from './punchStation.js';

export interface CornerClipJob {
  alongMm: number;
  acrossMm: number;
  thicknessMm: number;
  shearStrengthMPa: number;
  /** For the lengths in notes. */
  unit: LengthUnit;
}

/**
 * One corner clipped off in the notcher: station, both sides within the plate's notch, force of the straight cut
 * over that of the plate's own notch at its reference strength.
 * @param press the press, its limits in mm
 * @param job the sides taken off and the thickness in mm, shear strength in MPa
 * @param working collects the steps when given
 * @returns findings; `use` is a share, 1 is full
 * Source: common practice, no source.
 */
export function cornerClipFindings(press: Press, job: CornerClipJob, working?: Working): Finding[] {
  const station = stationOf(press, 'notcher', working);
  if (station.missing) return station.findings;
  const { unit } = job;
  const size = (what: string, sizeMm: number, meaning = what) => ({
    sizeMm,
    meaning,
    what: `${what} ${formatLength(sizeMm, unit)} ${unit}`,
    unit,
  });
  const longer = Math.max(job.alongMm, job.acrossMm);
  const shorter = Math.min(job.alongMm, job.acrossMm);
  return [
    ...station.findings,
    ...withinLimit(press, { key: 'notcherThickness', ...size('thickness', job.thicknessMm) }, working),
    ...withinLimit(
      press,
      { key: 'notcherWidth', ...size('corner clip', longer, 'longer side of the corner clip') },
      working,
    ),
    ...withinLimit(
      press,
      { key: 'notcherDepth', ...size('corner clip', shorter, 'shorter side of the corner clip') },
      working,
    ),
    ...shareFindings(press, job, working),
  ];
}

function shareFindings(press: Press, job: CornerClipJob, working?: Working): Finding[] {
  const forceN = cornerClipForceN(job, working);
  const widthMm = limitOf(press, 'notcherWidth');
  const depthMm = limitOf(press, 'notcherDepth');
  const thicknessMm = limitOf(press, 'notcherThickness');
  const reference = valueOr(press, 'referenceShear', defaultReferenceShearMPa);
  if (typeof reference !== 'number') return [reference];
  // A blank size has its own finding already.
  if (typeof widthMm !== 'number' || typeof depthMm !== 'number' || typeof thicknessMm !== 'number')
    return [];
  const sizes = [widthMm, depthMm, thicknessMm];
  if (!sizes.every(Number.isFinite))
    return [{ verdict: 'OK', governs: 'corner clip', note: '', use: 0, forceN }];
  const plateForceN = notchForceN({
    widthMm,
    depthMm,
    thicknessMm,
    where: 'edge',
    shearStrengthMPa: reference,
  });
  const plateSize = `${sizes.map((mm) => formatLength(mm, job.unit)).join(' × ')} ${job.unit}`;
  return [plateShareFinding(press, { forceN, plateForceN, station: 'corner clip', plateSize }, working)];
}
