import type { Edge, Outline } from './outline.js';
import type { Point } from './point.js';
import { toleranceMm } from './tolerance.js';

/** A straight line over a face: `across` it, so far from the left end, or `along` it, so far from the bottom edge. */
export interface LineOverFace {
  readonly runs: 'across' | 'along';
  readonly atMm: number;
}

/** A part of a line, measured along it. */
export interface Span {
  readonly fromMm: number;
  readonly toMm: number;
}

/**
 * Where a line over a face has steel on both of its sides: what is bent along it. A cut that crosses the line parts it in
 * two; along the edge of a cut there is nothing to bend.
 *
 * Formula: the places just before the line that lie in the outline, and of these the ones that do just after it.
 * @param outline the outline, as `outlineOf` gives it, in mm
 * @param line the line, in mm
 * @returns the spans in their order, in mm; none for a line beside the face
 * Valid for lines parallel to the length or across it. Throws nothing.
 * @example bentSpans(outline, { runs: 'across', atMm: 50 }) // [{ fromMm: 0, toMm: 100 }] of a plate 100 wide
 * Source: plane geometry.
 */
export function bentSpans({ edges }: Outline, line: LineOverFace): Span[] {
  const [before, after] = [spansBeside(edges, line, -1), spansBeside(edges, line, 1)];
  return before.flatMap((one) =>
    after.flatMap((other): Span[] => {
      const span = {
        fromMm: Math.max(one.fromMm, other.fromMm),
        toMm: Math.min(one.toMm, other.toMm),
      };
      return span.toMm - span.fromMm > toleranceMm ? [span] : [];
    }),
  );
}

/** How far a place lies along a line, and how far beyond it: to the right of one across, above one along. */
export function seenFrom(
  { runs, atMm }: LineOverFace,
  { x, y }: Point,
): { alongMm: number; beyondMm: number } {
  const [alongMm, offMm] = runs === 'across' ? [y, x] : [x, y];
  const beyondMm = offMm - atMm;
  return { alongMm, beyondMm: Math.abs(beyondMm) <= toleranceMm ? 0 : beyondMm };
}

/** The place so far along a line and so far beyond it. */
export function placeFrom({ runs, atMm }: LineOverFace, alongMm: number, beyondMm: number): Point {
  const offMm = atMm + beyondMm;
  return runs === 'across' ? { x: offMm, y: alongMm } : { x: alongMm, y: offMm };
}

/** The spans inside the outline at a place as near to the line as one likes, on one side of it. */
function spansBeside(edges: readonly Edge[], line: LineOverFace, side: -1 | 1): Span[] {
  const crossings = edges.flatMap((edge): number[] => {
    const [from, to] = [seenFrom(line, edge.from), seenFrom(line, edge.to)];
    const [a, b] = [from.beyondMm * side, to.beyondMm * side];
    if (a > 0 === b > 0) return [];
    const share = a / (a - b);
    return [from.alongMm + share * (to.alongMm - from.alongMm)];
  });
  crossings.sort((a, b) => a - b);
  const spans: Span[] = [];
  for (let at = 0; at + 1 < crossings.length; at += 2) {
    spans.push({ fromMm: crossings[at] as number, toMm: crossings[at + 1] as number });
  }
  return spans;
}
