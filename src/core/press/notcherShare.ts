import type { PressFinding } from '../check/finding.js';
import { notchForceN } from '../force/notch.js';
import type { Working } from '../working/working.js';
import { limitOf, referenceShearMPa } from './limit.js';
import { plateShareFinding } from './plateShare.js';
import type { Press } from './press.js';
import { unratedShare } from './share.js';

/** The force of a cut in the notcher over that of the plate's own notch, in an edge and at its reference strength. */
export function notcherShareFindings(
  press: Press,
  operation: 'notcher' | 'corner clip',
  forceN: number,
  working?: Working,
): PressFinding[] {
  const reference = referenceShearMPa(press);
  if (typeof reference !== 'number') return [reference];
  const widthMm = limitOf(press, 'notcherWidth');
  const depthMm = limitOf(press, 'notcherDepth');
  const thicknessMm = limitOf(press, 'notcherThickness');
  // A blank size has its own finding already.
  if (typeof widthMm !== 'number' || typeof depthMm !== 'number' || typeof thicknessMm !== 'number') {
    return [];
  }
  const sizesMm = [widthMm, depthMm, thicknessMm];
  if (!sizesMm.every(Number.isFinite)) return [unratedShare(press, operation, forceN)];
  const own = { widthMm, depthMm, thicknessMm, where: 'edge', shearStrengthMPa: reference } as const;
  const plate = { sizesMm, strengthMPa: reference };
  return [plateShareFinding(press, { operation, forceN, plateForceN: notchForceN(own), plate }, working)];
}
