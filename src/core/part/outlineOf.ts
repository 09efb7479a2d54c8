import { coreGap } from './coreGap.js';
import type { Edge, Outline } from './outline.js';
import { baseSides, type BaseSides } from './outlineBase.js';
import { cutsOf } from './outlineCuts.js';
import type { OutlineInput, OutlineProblem } from './outlineInput.js';
import { sizeProblem } from './outlineSizes.js';
import { type CutSide, cutSides } from './outlineSides.js';
import type { Point } from './point.js';
import { toleranceMm } from './tolerance.js';

/**
 * The outline of a face: the rectangle, mitered, with its clips and notches cut out.
 *
 * Formula: a mitered end lies at x = (distance from its long side) · tan θ from its long point.
 * @param input length and width, boundaries, ends, clips and notches, mm and rad
 * @returns the edges counter-clockwise from the left of the bottom, or why the cuts do not leave one piece with the
 *   cuts inside it. Steel of 1e-6 mm or less between two cuts is none. Miters that meet in a point leave a triangle,
 *   which is a part. A rectangle in an edge that begins exactly at its end is a notch at the corner.
 * Valid for straight cuts. Throws nothing.
 * @example outlineOf({ lengthMm: 300, widthMm: 100, bottom, top, left: { kind: 'sheared' }, right: { kind: 'sheared' } })
 * Source: plane geometry.
 */
export function outlineOf(input: OutlineInput): Outline | OutlineProblem {
  const noSize = sizeProblem(input);
  if (noSize) return noSize;
  const sides = baseSides(input);
  if ('problem' in sides) return sides;
  const cuts = cutsOf(input);
  if ('problem' in cuts) return cuts;
  if (cuts.length === 0) return { edges: sides.filter(hasLength) };
  const cut = cutSides(sides, cuts);
  if ('problem' in cut) return cut;
  const edges = edgesAround(sides, cut).filter(hasLength);
  return crossing(edges) ?? { edges };
}

interface Vertex {
  point: Point;
  /** Whose edge begins here. */
  of: Pick<Edge, 'cause' | 'kind'>;
}

function edgesAround(sides: BaseSides, cut: readonly CutSide[]): Edge[] {
  const vertices: Vertex[] = [];
  for (const [number, side] of sides.entries()) {
    const { corner, within = [] } = cut[number] ?? {};
    if (!corner) vertices.push({ point: side.from, of: side });
    for (const each of corner ? [corner, ...within] : within) {
      const path = each.path.map((point) => ({ point, of: each }));
      vertices.push(...path.slice(0, -1), ...path.slice(-1).map(({ point }) => ({ point, of: side })));
    }
  }
  return vertices.map(({ point, of }, at) => {
    const { point: to } = vertices[(at + 1) % vertices.length] as Vertex;
    return { from: point, to, cause: of.cause, kind: of.kind };
  });
}

function hasLength({ from, to }: Edge): boolean {
  return Math.abs(to.x - from.x) > toleranceMm || Math.abs(to.y - from.y) > toleranceMm;
}

/** The first edge of a cut that meets an edge it does not begin or end at. */
function crossing(edges: readonly Edge[]): OutlineProblem | undefined {
  const count = edges.length;
  for (const [at, edge] of edges.entries()) {
    if (edge.cause.number === undefined) continue;
    for (let step = 2; step < count - 1; step++) {
      const other = edges[(at + step) % count] as Edge;
      if (coreGap([edge.from, edge.to], [other.from, other.to]).distance > toleranceMm) continue;
      return { problem: 'cuts meet', cause: edge.cause, otherCause: other.cause };
    }
  }
  return undefined;
}
