import { type LineOverFace, placeFrom, seenFrom, type Span } from './bentSpans.js';
import type { Point } from './point.js';
import { toleranceMm } from './tolerance.js';

/** A straight boundary that a flange may end at. */
export interface Boundary {
  readonly from: Point;
  readonly to: Point;
}

/** The least flange beside a span of a bend: how long, which boundary it ends at, and the two places. */
export interface Flange<Bound extends Boundary> {
  readonly mm: number;
  readonly end: Bound;
  readonly at: readonly [Point, Point];
}

/**
 * How long a flange is where it is shortest along a bend: from the line, square to it, to the first boundary beyond it.
 *
 * Formula: b = min of the distance from the line over all boundaries that lie across from the span.
 * @param line the bend line, in mm
 * @param span the part of it that is bent, in mm
 * @param side 1 for what lies to the right of a line across or above one along, −1 for the other side
 * @param boundaries the edges of the face, and the other bends that run the same way, in mm
 * @returns the flange, 0 where a boundary meets the bend; undefined where nothing lies on that side
 * Valid for a span of `bentSpans`: inside it no boundary crosses the line. Throws nothing.
 * @example flangeBeside({ runs: 'across', atMm: 80 }, { fromMm: 0, toMm: 100 }, -1, outline.edges)?.mm // 80
 * Source: plane geometry.
 */
export function flangeBeside<Bound extends Boundary>(
  line: LineOverFace,
  span: Span,
  side: -1 | 1,
  boundaries: readonly Bound[],
): Flange<Bound> | undefined {
  let least: Flange<Bound> | undefined;
  for (const end of boundaries) {
    const place = nearestPlace(line, span, side, end);
    if (place && (least === undefined || place.mm < least.mm)) {
      const { mm, alongMm } = place;
      least = { mm, end, at: [placeFrom(line, alongMm, 0), placeFrom(line, alongMm, mm * side)] };
    }
  }
  return least;
}

/** Where a boundary comes nearest to the line, of what lies across from the span; undefined where none of it does. */
function nearestPlace(
  line: LineOverFace,
  { fromMm, toMm }: Span,
  side: -1 | 1,
  { from, to }: Boundary,
): { mm: number; alongMm: number } | undefined {
  const [a, b] = [seenFrom(line, from), seenFrom(line, to)];
  const [low, high] = a.alongMm <= b.alongMm ? [a, b] : [b, a];
  const [start, end] = [Math.max(low.alongMm, fromMm), Math.min(high.alongMm, toMm)];
  if (end - start <= toleranceMm) return undefined;
  const slope = (high.beyondMm - low.beyondMm) / (high.alongMm - low.alongMm);
  const beyondMm = (alongMm: number) => side * (low.beyondMm + slope * (alongMm - low.alongMm));
  const [first, last] = [beyondMm(start), beyondMm(end)];
  if (Math.max(first, last) <= toleranceMm) return undefined;
  const alongMm = first <= last ? start : end;
  return { mm: Math.max(0, Math.min(first, last)), alongMm };
}
