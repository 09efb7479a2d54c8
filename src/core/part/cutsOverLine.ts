import { bentSpans, type LineOverFace, placeFrom, seenFrom } from './bentSpans.js';
import type { Edge, Outline } from './outline.js';
import type { Point } from './point.js';
import { toleranceMm } from './tolerance.js';
import { voidsOf } from './void.js';

/** A cut that parts a line: how far it reaches beyond it, and a place on the line with the one it reaches to. */
export interface CutOverLine {
  readonly edge: Edge;
  readonly overMm: number;
  readonly at: readonly [Point, Point];
}

/**
 * The cuts that part a line over a face in two, with steel to bend on both sides of them. What takes only the end of a
 * line away, as a relief in a corner does, parts nothing.
 *
 * Formula: a = how far the floor of the cut lies beyond the line, seen from the mouth of the cut.
 * @param outline the outline, as `outlineOf` gives it, in mm
 * @param line the line, in mm
 * @returns the cuts in the order of the line, each with a ≥ 0 in mm: 0 for one that ends on the line
 * Valid for lines parallel to the length or across it. Throws nothing.
 * @example cutsOverLine(outline, { runs: 'across', atMm: 50 })[0]?.overMm // 10 of a notch 60 deep from the left end
 * Source: plane geometry.
 */
export function cutsOverLine(outline: Outline, line: LineOverFace): CutOverLine[] {
  const spans = bentSpans(outline, line);
  const gaps = spans.slice(1).map(({ fromMm }, at) => ({ fromMm: spans[at]?.toMm ?? fromMm, toMm: fromMm }));
  if (gaps.length === 0) return [];
  const cuts = voidsOf(outline).flatMap(({ edges }) => cutOf(edges, line));
  return gaps.flatMap(({ fromMm, toMm }) => {
    const alongMm = (fromMm + toMm) / 2;
    const cut = cuts.find((each) => each.fromMm <= alongMm && each.toMm >= alongMm);
    if (!cut) return [];
    const { edge, beyondMm } = cut;
    return [
      {
        edge,
        overMm: Math.abs(beyondMm),
        at: [placeFrom(line, alongMm, 0), placeFrom(line, alongMm, beyondMm)],
      },
    ];
  });
}

/** Where a cut that reaches over a line lies along it, and how far beyond the line its floor is. */
function cutOf(
  edges: readonly Edge[],
  line: LineOverFace,
): { edge: Edge; fromMm: number; toMm: number; beyondMm: number }[] {
  const [edge] = edges;
  if (!edge || edges.length === 1) return [];
  const places = [edge.from, ...edges.map(({ to }) => to)].map((point) => seenFrom(line, point));
  const along = places.map(({ alongMm }) => alongMm);
  const beyond = places.map(({ beyondMm }) => beyondMm);
  const [least, most] = [Math.min(...beyond), Math.max(...beyond)];
  if (least > toleranceMm || most < -toleranceMm) return [];
  const mouthMm = beyond[0] ?? 0;
  const beyondMm = mouthMm < 0 ? most : least;
  return [{ edge, fromMm: Math.min(...along), toMm: Math.max(...along), beyondMm }];
}
