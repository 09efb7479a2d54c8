import type { ClearanceRange } from './clearanceRange.js';
import { edgeClearance, edgeClearanceRange } from './edgeClearance.js';
import { freedomOf } from './freedom.js';
import type { Edge } from './outline.js';
import type { Face, PlacedHole } from './part.js';
import type { Box, Shape } from './shape.js';
import { type Void, voidsOf } from './void.js';

/** A hole and an edge, in mm, measured as each rule measures. */
export interface HoleToEdge {
  /** From the rim of the hole: press practice. */
  readonly rim: ClearanceRange;
  /** From the center of the hole: AISC, CSA, AS. */
  readonly center: ClearanceRange;
  /** From the nearer center of a slot's end radii: EN. Of any other hole the same as `center`. */
  readonly endRadius: ClearanceRange;
}

/**
 * Measures every hole of a face against every edge of its outline, and hands each pair to `visit`.
 *
 * Formula: clearance of the hole, of its center and of a slot's core from the edge; `edgeClearance` decides the sign.
 * @param face the face with its outline
 * @param holes the holes of the part; those of other faces are left out
 * @param visit takes each pair with its clearances in mm
 * @returns how many pairs were visited: holes of the face times its edges
 * Valid for outlines of `outlineOf`. Throws what `visit` throws.
 * @example edgeClearances(face, part.holes, (hole, edge, { rim }) => check(edge.kind, rim.least.distance))
 * Source: AISC 360-22 J3.4, EN 1993-1-8 Table 3.3 for where they measure from; plane geometry.
 */
export function edgeClearances(
  face: Face,
  holes: readonly PlacedHole[],
  visit: (hole: PlacedHole, edge: Edge, clearances: HoleToEdge) => void,
): number {
  const voids = voidsOf(face.outline);
  let visited = 0;
  for (const hole of holes) {
    if (hole.face !== face.id) continue;
    const { core } = hole.shape;
    const rim = measureOf(hole.shape, hole.free);
    const center = measureOf({ core: [hole.center], radius: 0 }, hole.free);
    const endRadius = core.length === 2 ? measureOf({ core, radius: 0 }, hole.free) : undefined;
    for (const around of voids) {
      for (const edge of around.edges) {
        const fromCenter = center(edge, around);
        visit(hole, edge, {
          rim: rim(edge, around),
          center: fromCenter,
          endRadius: endRadius?.(edge, around) ?? fromCenter,
        });
        visited++;
      }
    }
  }
  return visited;
}

function measureOf(shape: Shape, free: Box | undefined): (edge: Edge, around: Void) => ClearanceRange {
  if (free) {
    const freedom = freedomOf(shape, free);
    return (edge, around) => edgeClearanceRange(freedom, edge, around);
  }
  return (edge, around) => {
    const least = edgeClearance(shape, edge, around);
    return { least, most: least.distance };
  };
}
