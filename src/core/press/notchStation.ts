import type { PressFinding } from '../check/finding.js';
import { type NotchBites, notchBites } from '../force/notchBites.js';
import type { Notch } from '../force/notchCutLength.js';
import { InputError } from '../inputError.js';
import type { Working } from '../working/working.js';
import { limitOf, limitStep, roundingShare, withinLimit } from './limit.js';
import { notcherShareFindings } from './notcherShare.js';
import type { Press } from './press.js';
import { stationOf } from './stationOf.js';

export interface NotchJob extends Notch {
  thicknessMm: number;
  shearStrengthMPa: number;
}

/**
 * One notch against a press's notcher: station, thickness, narrowest tool, bites, force. Width and depth on the plate are
 * those of one bite: a bigger notch is several. Share of rating: the worst bite's force over that of the plate's own notch, in an
 * edge and at the plate's reference strength, so that the plate's own notch in mild steel reads exactly 100%.
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
  const found = [...station.findings, within];
  const narrowest = narrowestNotch(press, job, working);
  if (narrowest?.outcome === 'failed') return [...found, narrowest];
  const bites = notchBitesOnPress(press, job, working);
  if (narrowest) found.push(narrowest);
  if (Array.isArray(bites)) return [...found, ...bites];
  const { count, forceN } = bites;
  if (count > 1) {
    found.push({ rule: 'several bites', outcome: 'not applicable', verdict: 'OK', press: press.name, count });
  }
  return [...found, ...notcherShareFindings(press, 'notcher', forceN, working)];
}

/** A notch in an edge is at least as wide as the tool; at a corner the tool may reach over the end. */
function narrowestNotch(
  press: Press,
  { where, widthMm }: NotchJob,
  working?: Working,
): PressFinding | undefined {
  if (where !== 'edge') return undefined;
  const item = 'notcherNarrowest';
  const limit = leastOf(press);
  const given = { kind: 'length', value: widthMm, meaning: 'width of the notch' } as const;
  if (typeof limit !== 'number') {
    if (isWholeBites(press, widthMm)) return undefined;
    limitStep(working, press, item, given, '≥', limit.verdict);
    return limit;
  }
  const held = widthMm >= limit * (1 - roundingShare);
  const verdict = held ? 'OK' : 'No tool';
  limitStep(working, press, item, given, '≥', verdict);
  const fact = { rule: 'narrowest notch', press: press.name, given: widthMm, limit } as const;
  return { ...fact, outcome: held ? 'held' : 'failed', verdict };
}

/** The narrowest notch in an edge; 0 where the press has no such limit. */
function leastOf(press: Press): number | PressFinding {
  const limit = limitOf(press, 'notcherNarrowest');
  return limit === Infinity ? 0 : limit;
}

/** A notch of so many whole bites is made by the plate's own tool, whether or not there are narrower ones. */
function isWholeBites(press: Press, widthMm: number): boolean {
  const toolMm = limitOf(press, 'notcherWidth');
  if (typeof toolMm !== 'number' || !Number.isFinite(toolMm)) return false;
  const bites = Math.max(1, Math.round(widthMm / toolMm));
  return Math.abs(widthMm - bites * toolMm) <= widthMm * roundingShare;
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
  const narrowest = job.where === 'edge' ? leastOf(press) : 0;
  const narrowestMm = typeof narrowest === 'number' ? narrowest : 0;
  try {
    return notchBites({ ...job, toolWidthMm, toolDepthMm, narrowestMm }, working);
  } catch (error) {
    if (!(error instanceof InputError) || error.failure.argument !== 'Notch') throw error;
    const { failure } = error;
    return [{ rule: 'notch bites', outcome: 'failed', verdict: 'Too big', press: press.name, failure }];
  }
}
