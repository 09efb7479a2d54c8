import { leastDimensionMm } from '../tooling/hole.js';
import type { ReadyRow } from './checkOnPress.js';
import { columnsOf, holeLayout, type PlacedHole } from './holeLayout.js';
import { contourOf } from './outline/contour.js';
import { cornersCutOff } from './outline/cornersCutOff.js';
import { liesOn } from './outline/crossing.js';
import { endsOf } from './outline/ends.js';
import { type Fence, fenceOf } from './outline/fence.js';

type Placed = ReadyRow['places'][number];

/**
 * What is said of holes that may run over a miter or a clipped corner. The row says neither which long side a miter
 * keeps nor which corner is clipped, so this is no failure: they are taken as on the press, the long side at the fence
 * and the left end at the stop. Nothing is said of holes whose place the row leaves open. Source: geometry.
 */
export function holesOverCuts(row: ReadyRow): string[] {
  const { section, lengthMm, clips, miterRad, places } = row;
  const [first] = places;
  if (!first || lengthMm === undefined || (miterRad === 0 && !clips)) return [];
  const { element, widthMm } = first.place;
  const fence = fenceOf(section, element);
  const ends = endsOf(row, { lengthMm, widthMm }, fence);
  const mitred = contourOf(ends, [], []);
  const cut = contourOf(ends, cornersCutOff(row, section, ends), []);
  const longestMm = lengthMm + widthMm * (Math.tan(ends.stopRad) + Math.tan(ends.farRad));
  const uncut = contourOf({ ...ends, lengthMm: longestMm, stopRad: 0, farRad: 0 }, [], []);
  const on = (contour: typeof cut) => (hole: PlacedHole) =>
    liesOn(contour, hole, leastDimensionMm(hole.group.hole) / 2);
  const holes = places
    .filter(({ place }) => place.element === element && place.widthMm === widthMm)
    .filter(isPlaced)
    .flatMap(({ group, place }) => holeLayout(group, place, lengthMm).holes)
    .filter(on(uncut));
  const overMiter = holes.filter((hole) => !on(mitred)(hole)).length;
  const overCorner = holes.filter((hole) => on(mitred)(hole) && !on(cut)(hole)).length;
  return [
    ...caution(overMiter, miterWords(fence)),
    ...caution(overCorner, 'if the corner beside is one that is clipped'),
  ];
}

/** The row gives all that says where the holes lie. */
function isPlaced({ group, place }: Placed): boolean {
  // A gage of a web may be between two lines, or from the back of the channel.
  if (group.endMm === undefined || place.edgeMm === undefined) return false;
  if (place.element === 'web' && place.gageMm !== undefined) return false;
  return columnsOf(group, place) === 1 || group.pitchMm !== undefined;
}

function miterWords({ edge }: Fence): string {
  const long = edge === 'edge' ? 'the edge that Edge is taken from' : `the ${edge}`;
  return `if ${long} is the long side and End is taken from the left end`;
}

function caution(count: number, when: string): string[] {
  if (count === 0) return [];
  const [holes, so] = count === 1 ? ['1 hole', 'it does'] : [`${count} holes`, 'they do'];
  return [`caution: ${holes} may run over the cut: ${so} ${when}`];
}
