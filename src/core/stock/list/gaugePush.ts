import { gaugeReachMm, slugMm } from '../../cut/backGaugeSetting.js';
import { cutLengthMm } from '../../cut/cutLength.js';
import { toleranceMm } from '../../part/tolerance.js';
import type { PlannedPiece } from '../stockPlan.js';
import type { GaugePush } from './jobPlan.js';
import type { JobPart, StockJob } from './stockJob.js';

/**
 * What is pushed to the stop for a piece as it lies in the bar: its front face touches, its far face is cut.
 *
 * Formula: as `cutLengthMm` has it; the kerf is the setting's, else the slug of the press of its row
 */
export function gaugePush(job: StockJob, part: JobPart, piece: PlannedPiece): GaugePush {
  const { press, notNested } = part;
  if (!part.isSheared) return { none: true };
  const kerfMm = job.kerf.from === 'setting' || !press ? job.kerf.mm : slugMm(job, press);
  if (kerfMm === undefined) return { open: 'Angle shear slug' };
  const mm = pushMm(job, part, piece, kerfMm);
  if (mm === undefined) return { open: openCell(notNested) };
  const reachMm = press && gaugeReachMm(press);
  if (reachMm === undefined) return { mm, reach: 'unknown' };
  return { mm, reach: mm > reachMm + toleranceMm ? 'over' : 'within' };
}

function openCell(notNested: JobPart['notNested']): 'Long side' | 'Miter leg' | 'how it lies' {
  return notNested === 'Long side' || notNested === 'Miter leg' ? notNested : 'how it lies';
}

/** Undefined where it is not known which point of the piece touches the stop. */
function pushMm(job: StockJob, part: JobPart, piece: PlannedPiece, kerfMm: number): number | undefined {
  const { longMm, miterLeftRad, miterRightRad, notNested } = part;
  if (notNested !== undefined) {
    // With one end square the longer edge touches, wherever it is.
    if (miterLeftRad > 0 && miterRightRad > 0) return undefined;
    return longMm + kerfMm / Math.cos(miterRightRad);
  }
  const { leanLeftRad, leanRightRad } = piece;
  if (leanLeftRad === 0 && leanRightRad === 0) return longMm + kerfMm;
  const isSameEdge = leanLeftRad * leanRightRad <= 0;
  return cutLengthMm({
    longMm,
    widthMm: job.widthMm,
    miterLeftRad: Math.abs(leanLeftRad),
    miterRightRad: Math.abs(leanRightRad) * (isSameEdge ? 1 : -1),
    kerfMm,
  });
}
