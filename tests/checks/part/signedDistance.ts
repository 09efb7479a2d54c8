// A referee of its own for gaps and depths of overlap: it tries directions, and knows nothing of sides.
import type { Pair } from 'polygon-clipping';

const directions = 720;
const zoom = 24;
const levels = 7;

/**
 * The signed distance of two convex sets given by their corners: the widest gap any direction shows. Sets that are
 * apart show their distance in the direction of their nearest places; of sets that overlap the widest gap is minus the
 * least move that parts them. Every direction that shows more than its neighbors is looked at more closely.
 */
export function signedDistance(a: readonly Pair[], b: readonly Pair[]): number {
  const gap = (angle: number) => gapIn(a, b, Math.cos(angle), Math.sin(angle));
  let step = (2 * Math.PI) / directions;
  let found = peaks(
    gap,
    Array.from({ length: directions + 2 }, (_, at) => at * step),
  );
  for (let level = 0; level < levels; level++) {
    const finer = (2 * step) / zoom;
    found = found.flatMap(({ angle }) =>
      peaks(
        gap,
        Array.from({ length: zoom + 3 }, (_, at) => angle - step - finer + at * finer),
      ),
    );
    // What lies far below the best cannot rise above it: the gap changes by no more than size times angle.
    const best = Math.max(...found.map((peak) => peak.value));
    const reach = sizeOf(a, b) * finer * 2;
    found = found.filter((peak) => peak.value >= best - reach).slice(0, 40);
    step = finer;
  }
  return Math.max(...found.map(({ value }) => value));
}

interface Peak {
  angle: number;
  value: number;
}

/** The angles that show no less than both neighbors; the first and the last have none and are left out. */
function peaks(gap: (angle: number) => number, angles: readonly number[]): Peak[] {
  const values = angles.map(gap);
  return angles.flatMap((angle, at) => {
    const [before, value, after] = [values[at - 1], values[at], values[at + 1]];
    if (before === undefined || value === undefined || after === undefined) return [];
    return value >= before && value >= after ? [{ angle, value }] : [];
  });
}

function gapIn(a: readonly Pair[], b: readonly Pair[], x: number, y: number): number {
  let most = -Infinity;
  for (const [px, py] of a) most = Math.max(most, px * x + py * y);
  let least = Infinity;
  for (const [px, py] of b) least = Math.min(least, px * x + py * y);
  return least - most;
}

function sizeOf(a: readonly Pair[], b: readonly Pair[]): number {
  return Math.max(...a.flatMap(([ax, ay]) => b.map(([bx, by]) => Math.hypot(bx - ax, by - ay))));
}
