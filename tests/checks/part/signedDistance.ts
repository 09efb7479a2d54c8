// A referee of its own for gaps and depths of overlap: it tries directions, and knows nothing of sides.
import type { Pair } from 'polygon-clipping';

const coarse = 360;
const zoom = 16;
const levels = 11;
const mostPeaks = 12;

/**
 * The signed distance of two convex sets given by their corners: the widest gap any direction shows. Sets that are
 * apart show their distance in the direction of their nearest places; of sets that overlap the widest gap is minus the
 * least move that parts them. Every direction that shows more than its neighbors is looked at more closely. Where
 * directions show more than `enough`, that is what is given.
 */
export function signedDistance(a: readonly Pair[], b: readonly Pair[], enough = Infinity): number {
  let step = (2 * Math.PI) / coarse;
  let peaks: Peak[] = [];
  let widest = findPeaks(peaks, a, b, 0, step, coarse + 2);
  if (widest > enough) return widest;
  const size = sizeOf(a, b);
  for (let level = 0; level < levels; level++) {
    const finer = (2 * step) / zoom;
    const found: Peak[] = [];
    let best = -Infinity;
    for (const { angle } of peaks) {
      best = Math.max(best, findPeaks(found, a, b, angle - step - finer, finer, zoom + 3));
    }
    // What lies far below the best cannot rise above it: the gap changes by no more than size times angle.
    peaks = highest(found, best - size * finer * 2);
    widest = Math.max(widest, best);
    step = finer;
  }
  return widest;
}

/** A smooth top is flat when seen from near, and every angle on it a peak by rounding: few of them are enough. */
function highest(peaks: Peak[], least: number): Peak[] {
  const kept = peaks.filter(({ value }) => value >= least);
  return kept.length <= mostPeaks ? kept : kept.sort((a, b) => b.value - a.value).slice(0, mostPeaks);
}

interface Peak {
  angle: number;
  value: number;
}

/** Adds the angles that show no less than both neighbors, but for the first and the last; gives the widest gap. */
function findPeaks(
  peaks: Peak[],
  a: readonly Pair[],
  b: readonly Pair[],
  from: number,
  step: number,
  count: number,
): number {
  let [before, value, best] = [NaN, NaN, -Infinity];
  for (let at = 0; at < count; at++) {
    const next = gapIn(a, b, Math.cos(from + at * step), Math.sin(from + at * step));
    if (value > before && value >= next) peaks.push({ angle: from + (at - 1) * step, value });
    before = value;
    value = next;
    if (next > best) best = next;
  }
  return best;
}

function gapIn(a: readonly Pair[], b: readonly Pair[], x: number, y: number): number {
  let most = -Infinity;
  for (const corner of a) {
    const along = corner[0] * x + corner[1] * y;
    if (along > most) most = along;
  }
  let least = Infinity;
  for (const corner of b) {
    const along = corner[0] * x + corner[1] * y;
    if (along < least) least = along;
  }
  return least - most;
}

function sizeOf(a: readonly Pair[], b: readonly Pair[]): number {
  let size = 0;
  for (const [ax, ay] of a) for (const [bx, by] of b) size = Math.max(size, Math.hypot(bx - ax, by - ay));
  return size;
}
