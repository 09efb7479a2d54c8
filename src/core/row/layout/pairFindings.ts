import type { RowFinding } from '../../check/rowFact.js';
import type { Thing } from '../../check/rowFact.js';
import { holePairs, type VisitPair } from '../../part/holePairs.js';
import type { PlacedHole } from '../../part/part.js';
import { punchDiagonalMm } from '../../tooling/hole.js';
import { distanceFinding } from './distanceFinding.js';
import { holeDistances } from './holeDistances.js';
import type { HeldLayout } from './edgeFindings.js';
import { holesOf } from './layGroup.js';
import { WorstDistances } from './measured.js';

/** No code asks for more than this many diameters from center to center. From the tables built in. */
const mostDiameters = 3;
/** More groups than a row has: two groups make one number. */
const mostGroups = 10_000;

/** Every two holes of a face: into each other, too near by the code, too near by press practice. */
export function pairFindings(layout: HeldLayout): RowFinding[] {
  const worst = new WorstDistances();
  const all = holesOf(layout.groups);
  if (all.length < 2) return [];
  let reachMm = 0;
  for (const { webMm, group } of layout.held.values()) {
    reachMm = Math.max(reachMm, webMm, mostDiameters * punchDiagonalMm(group.hole));
  }
  const meet: VisitPair = (a, b, rim, repeats) => {
    const [first, second] = a.group <= b.group ? [a, b] : [b, a];
    const [one, other] = [layout.held.get(first.group), layout.held.get(second.group)];
    if (!one || !other) return;
    const key = first.group * mostGroups + second.group;
    const more = () => ({ face: a.face, between: [thingOf(first), thingOf(second)] as const });
    for (const measured of holeDistances([one, other], [first, second], rim, layout.code)) {
      worst.add(measured, key, more, repeats);
    }
  };
  const slides = (hole: PlacedHole) =>
    layout.groups.find(({ index }) => index === hole.group)?.rigid && hole.free;
  for (const { rigid, holes } of layout.groups) {
    // Holes at given distances keep them wherever they lie as a whole.
    if (rigid && holes.some(({ free }) => free)) holePairs(holes.map(fixed), reachMm, meet);
  }
  holePairs(all, reachMm, (a, b, rim, repeats) => {
    if (a.group !== b.group || !slides(a)) meet(a, b, rim, repeats);
  });
  return [...worst].map(({ fact, outcome }) => distanceFinding(layout, fact, outcome));
}

function thingOf({ group, index }: PlacedHole): Thing {
  return { is: 'hole', group, index };
}

/** The hole at the place it is read to have. */
function fixed({ face, group, index, center, shape }: PlacedHole): PlacedHole {
  return { face, group, index, center, shape };
}
