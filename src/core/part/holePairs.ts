import { type ClearanceRange, clearanceRange, type Placed, sweptOf } from './clearanceRange.js';
import type { PlacedHole } from './part.js';
import { toleranceMm } from './tolerance.js';

/** Takes a pair of holes; `repeats` is how many pairs of the same two groups it stands for, itself included. */
export type VisitPair = (a: PlacedHole, b: PlacedHole, range: ClearanceRange, repeats: number) => void;

/** All pairs of holes on one face, and how many of them may be within reach: the sum of `repeats`. */
export interface PairCount {
  readonly within: number;
  readonly pairs: number;
}

/**
 * Finds every pair of holes on one face that may be within a distance of each other.
 *
 * Formula: sort and sweep along x by the extents of the swept holes.
 * @param holes the holes of the part
 * @param reachMm rim to rim, at least 0: pairs farther apart wherever they lie are only counted
 * @param visit takes each pair that does not overlap with `repeats` 1; of the overlapping pairs of two groups (or
 *   within one) only the deepest of the first 200, counted, and where holes are not placed the one with the lowest `most` beside it
 * @returns the pairs within reach, and all pairs: n(n − 1)/2 of each face
 * Valid where all holes of a group have one shape, direction and freedom. Throws what `visit` throws.
 * @example holePairs(part.holes, 3 * diameterMm, (a, b, { least }) => check(least.distance))
 * Source: plane geometry.
 */
export function holePairs(holes: readonly PlacedHole[], reachMm: number, visit: VisitPair): PairCount {
  let [within, pairs] = [0, 0];
  const groups = holes.reduce((most, { group }) => Math.max(most, group), 0) + 1;
  for (const face of new Set(holes.map((hole) => hole.face))) {
    const spans = holes.filter((hole) => hole.face === face).map(spanOf);
    pairs += (spans.length * (spans.length - 1)) / 2;
    const overlaps = new Map<number, Overlap>();
    sweepAlong(spans, reachMm, (a, b) => {
      const key = a.group < b.group ? a.group * groups + b.group : b.group * groups + a.group;
      const known = overlaps.get(key);
      if (known && (known.count >= mostOverlaps || (known.coincident && coincide(a, b)))) {
        known.count++;
        within++;
        return;
      }
      const range = clearanceRange(a.places, b.places);
      if (range.least.distance > reachMm) return;
      within++;
      if (range.least.distance >= -toleranceMm) visit(a.hole, b.hole, range, 1);
      else overlaps.set(key, withPair(known, { a, b, range }));
    });
    for (const overlap of overlaps.values()) visitOverlap(overlap, visit);
  }
  return { within, pairs };
}

/** Of the overlapping pairs of two groups, so many are measured; the others are only counted. */
const mostOverlaps = 200;

/** A hole with the extents of all places it may take. */
interface Span {
  hole: PlacedHole;
  group: number;
  places: Placed;
  x0: number;
  x1: number;
  y0: number;
  y1: number;
}

function spanOf(hole: PlacedHole): Span {
  const swept = sweptOf(hole);
  const { core, radius } = swept;
  const places: Placed = hole.free ? { shape: hole.shape, free: hole.free, swept } : hole;
  const span: Span = {
    hole,
    group: hole.group,
    places,
    x0: Infinity,
    x1: -Infinity,
    y0: Infinity,
    y1: -Infinity,
  };
  for (const { x, y } of core) {
    if (x - radius < span.x0) span.x0 = x - radius;
    if (x + radius > span.x1) span.x1 = x + radius;
    if (y - radius < span.y0) span.y0 = y - radius;
    if (y + radius > span.y1) span.y1 = y + radius;
  }
  return span;
}

/** Meets every two spans that are not farther apart than the reach, in x or in y. */
function sweepAlong(spans: Span[], reachMm: number, meet: (a: Span, b: Span) => void): void {
  spans.sort((a, b) => a.x0 - b.x0);
  const open: Span[] = [];
  for (const span of spans) {
    let kept = 0;
    for (const other of open) {
      if (other.x1 + reachMm < span.x0) continue;
      open[kept++] = other;
      if (other.y1 + reachMm >= span.y0 && span.y1 + reachMm >= other.y0) meet(other, span);
    }
    open.length = kept;
    open.push(span);
  }
}

interface Pair {
  a: Span;
  b: Span;
  range: ClearanceRange;
}

/** The overlapping pairs of two groups. No pair of them is deeper than one whose places coincide. */
interface Overlap {
  deepest: Pair;
  lowest: Pair;
  count: number;
  coincident: boolean;
}

function withPair(known: Overlap | undefined, pair: Pair): Overlap {
  const coincident = coincide(pair.a, pair.b);
  if (!known) return { deepest: pair, lowest: pair, count: 1, coincident };
  if (isDeeper(pair.range, known.deepest.range)) known.deepest = pair;
  if (pair.range.most < known.lowest.range.most) known.lowest = pair;
  known.count++;
  known.coincident ||= coincident;
  return known;
}

/** Of pairs as deep, the one that can come less far apart: so the order of the holes changes nothing. */
function isDeeper(a: ClearanceRange, b: ClearanceRange): boolean {
  const deeper = b.least.distance - a.least.distance;
  return Math.abs(deeper) > toleranceMm ? deeper > 0 : a.most < b.most;
}

/** True where two holes have the same middle of all their places: holes are symmetric, so no overlap is deeper. */
function coincide(a: Span, b: Span): boolean {
  return (
    Math.abs(a.x0 + a.x1 - b.x0 - b.x1) <= toleranceMm && Math.abs(a.y0 + a.y1 - b.y0 - b.y1) <= toleranceMm
  );
}

function visitOverlap({ deepest, lowest, count }: Overlap, visit: VisitPair): void {
  const apart = lowest.range.most < deepest.range.most;
  visit(deepest.a.hole, deepest.b.hole, deepest.range, apart ? count - 1 : count);
  if (apart) visit(lowest.a.hole, lowest.b.hole, lowest.range, 1);
}
