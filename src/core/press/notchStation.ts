import type { PressFinding } from '../check/finding.js';
import { type NotchBites, notchBites } from '../force/notchBites.js';
import type { Notch } from '../force/notchCutLength.js';
import { InputError } from '../inputError.js';
import type { Working } from '../working/working.js';
import { limitOf, withinLimit } from './limit.js';
import { notcherShareFindings } from './notcherShare.js';
import type { Press } from './press.js';
import { stationOf } from './stationOf.js';

export interface NotchJob extends Notch {
  thicknessMm: number;
  shearStrengthMPa: number;
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
export function notchFindings(press: Press, job: NotchJob, working?: Working): PressFinding[] {
  const station = stationOf(press, 'notcher', working);
  if (station.missing) return station.findings;
  const thickness = {
    item: 'notcherThickness',
    sized: { is: 'thickness' },
    given: job.thicknessMm,
  } as const;
  const within = withinLimit(press, thickness, working);
  const bites = notchBitesOnPress(press, job, working);
  const forced = Array.isArray(bites) ? bites : notcherShareFindings(press, 'notcher', bites.forceN, working);
  return [...station.findings, within, ...forced];
}

/** The bites of a notch with the press's own tool; findings where its size is not known, or bites cannot be made. */
export function notchBitesOnPress(
  press: Press,
  job: NotchJob,
  working?: Working,
): NotchBites | PressFinding[] {
  const toolWidthMm = limitOf(press, 'notcherWidth');
  const toolDepthMm = limitOf(press, 'notcherDepth');
  if (typeof toolWidthMm !== 'number' || typeof toolDepthMm !== 'number') {
    return [toolWidthMm, toolDepthMm].filter((limit) => typeof limit !== 'number');
  }
  try {
    return notchBites({ ...job, toolWidthMm, toolDepthMm }, working);
  } catch (error) {
    if (!(error instanceof InputError) || error.failure.argument !== 'Notch') throw error;
    const { failure } = error;
    return [{ rule: 'notch bites', outcome: 'failed', verdict: 'Too big', press: press.name, failure }];
  }
}
