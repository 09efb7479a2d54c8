import type { RowJob } from '../rowJob.js';
import { contourOf, type Ends } from './contour.js';
import { crossesItself } from './crossing.js';
import type { Fence } from './fence.js';

/** The ends of a part, mitred as far as both miters fit in its length; the edge at the fence keeps the whole length. */
export function endsOf(
  { miterLeftRad, miterRightRad }: Pick<RowJob, 'miterLeftRad' | 'miterRightRad'>,
  part: { lengthMm: number; widthMm: number },
  fence: Fence,
): Ends {
  const ends = { ...part, stopRad: miterLeftRad, farRad: miterRightRad, long: fence.side };
  return crossesItself(contourOf(ends, [], [])) ? { ...ends, stopRad: 0, farRad: 0 } : ends;
}
