import type { PressFinding } from '../check/finding.js';
import { cornerClipForceN } from '../force/cornerClip.js';
import type { Working } from '../working/working.js';
import { withinLimit } from './limit.js';
import { notcherShareFindings } from './notcherShare.js';
import type { Press } from './press.js';
import { stationOf } from './stationOf.js';

export interface CornerClipJob {
  alongMm: number;
  acrossMm: number;
  thicknessMm: number;
  shearStrengthMPa: number;
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
export function cornerClipFindings(press: Press, job: CornerClipJob, working?: Working): PressFinding[] {
  const station = stationOf(press, 'notcher', working);
  if (station.missing) return station.findings;
  const { alongMm, acrossMm, thicknessMm } = job;
  const checks = [
    { item: 'notcherThickness', sized: { is: 'thickness' }, given: thicknessMm },
    {
      item: 'notcherWidth',
      sized: { is: 'corner clip', side: 'longer' },
      given: Math.max(alongMm, acrossMm),
    },
    {
      item: 'notcherDepth',
      sized: { is: 'corner clip', side: 'shorter' },
      given: Math.min(alongMm, acrossMm),
    },
  ] as const;
  return [
    ...station.findings,
    ...checks.map((each) => withinLimit(press, each, working)),
    ...notcherShareFindings(press, 'corner clip', cornerClipForceN(job, working), working),
  ];
}
