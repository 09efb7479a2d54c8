// One face: its outline, and its holes against the library and the search by directions.
import type { Pair, Ring } from 'polygon-clipping';
import { edgeClearances, type HoleToEdge } from '../../../src/core/part/edgeClearances.js';
import { overhangMm } from '../../../src/core/part/inside.js';
import type { Edge, Outline } from '../../../src/core/part/outline.js';
import type { PlacedHole } from '../../../src/core/part/part.js';
import { checkOutline } from './checkOutline.js';
import { refereedClearance, type Taken } from './edgeReferee.js';
import { type Grown, grownHole } from './holeReferee.js';
import { libraryContains } from './libraryReferee.js';
import type { GivenFace, GivenHole } from './randomPart.js';
import { require, requireSpan, type Tally, toleranceMm } from './verdict.js';

/** Holds a face and the holes in it (`placed` stand in the order of `given`) against the referees. */
export function checkFace(
  tally: Tally,
  face: GivenFace,
  given: readonly GivenHole[],
  placed: PlacedHole[],
): void {
  const checked = checkOutline(face);
  if (!checked) {
    tally.counts.refused++;
    return;
  }
  tally.counts.fit++;
  const { outline, ring, taken } = checked;
  const holes = new Map(placed.map((hole, at) => [hole, aboutHole(given[at] as GivenHole, ring)]));
  const visited = edgeClearances(
    { id: face.id, widthMm: face.input.widthMm, thicknessMm: 10, outline },
    placed,
    (hole, edge, clearances) => {
      const about = holes.get(hole) as AboutHole;
      about.least = Math.min(about.least, clearances.rim.least.distance);
      checkEdge(tally, about, edge, clearances, taken);
    },
  );
  const own = [...holes].filter(([hole]) => hole.face === face.id);
  require(visited === outline.edges.length * own.length, () =>
    `${visited} visited of ${JSON.stringify({ outline, face })}`);
  for (const [hole, about] of own) checkContained(outline, ring, hole, about);
}

interface AboutHole {
  given: GivenHole;
  grown: Grown;
  center: Grown;
  endRadius: Grown;
  /** False where even the circle around the hole lies on the face, so that it overlaps nothing. */
  mayOverlap: boolean;
  least: number;
}

function aboutHole(given: GivenHole, ring: Ring): AboutHole {
  const grown = grownHole(given);
  const { corners, radius } = grown;
  const middle: Pair = [given.center.x, given.center.y];
  const around = Math.max(...corners.map(([x, y]) => Math.hypot(x - middle[0], y - middle[1]))) + radius;
  const center = { corners: [middle], radius: 0 };
  return {
    given,
    grown,
    center,
    endRadius: corners.length === 2 ? { corners, radius: 0 } : center,
    mayOverlap: !libraryContains(ring, [middle], around),
    least: Infinity,
  };
}

function checkEdge(
  tally: Tally,
  about: AboutHole,
  edge: Edge,
  clearances: HoleToEdge,
  taken: readonly Taken[],
): void {
  const measures = ['rim', 'center', 'endRadius'] as const;
  const shapes = { rim: about.grown, center: about.center, endRadius: about.endRadius };
  for (const measure of measures) {
    const { least, most } = clearances[measure];
    const shape = shapes[measure];
    const what = () => `${measure} of ${JSON.stringify(about.given)} to ${JSON.stringify(edge)}`;
    const { distance, bySearch } = refereedClearance(shape, edge, taken, about.mayOverlap);
    tally.agree(least.distance, distance, bySearch, what);
    require(most === least.distance, what);
    requireSpan(least, what);
    tally.counts.distances++;
    if (least.distance < -toleranceMm) tally.counts.overhangs++;
  }
}

/** No edge is negative exactly where the hole lies on the face. */
function checkContained(
  outline: Outline,
  ring: Ring,
  hole: PlacedHole,
  { given, grown, least }: AboutHole,
): void {
  const overhang = overhangMm(outline, hole.shape);
  const what = () => `overhang ${overhang}, least ${least} of ${JSON.stringify(given)}`;
  require(overhang > toleranceMm === least < -toleranceMm, what);
  // Between a touch and 1e-5 mm only the number is held, not the word.
  if (overhang > toleranceMm && overhang < 1e-5) return;
  const { corners, radius } = inset(grown, given);
  require(overhang <= toleranceMm === libraryContains(ring, corners, radius), what);
}

/** The hole a little smaller, so that one that touches an edge is clear of it. */
function inset({ corners, radius }: Grown, { center }: GivenHole): Grown {
  if (radius > 0) return { corners, radius: radius - 3e-6 };
  const nearer = corners.map(([x, y]): Pair => {
    const share = 5e-6 / Math.hypot(x - center.x, y - center.y);
    return [x + (center.x - x) * share, y + (center.y - y) * share];
  });
  return { corners: nearer, radius };
}
