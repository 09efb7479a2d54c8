import type { HolePlace } from './holePlace.js';
import { layGroup } from './layout/layGroup.js';
import type { HoleGroup } from './rowJob.js';

/** A hole where it lies: from the end at the stop and from the edge at the throat, in mm. */
export interface PlacedHole {
  group: HoleGroup;
  /** From 1. */
  number: number;
  alongMm: number;
  acrossMm: number;
}

/** The holes of a group along a part, and what the row does not say of them and how they are taken. */
export interface HoleLayout {
  holes: PlacedHole[];
  assumed: string[];
}

/**
 * The holes of a group along a part. Two lines where a plate has a gage; what the row leaves open is taken evenly or in
 * the middle, and said.
 */
export function holeLayout(group: HoleGroup, place: HolePlace, lengthMm: number): HoleLayout {
  if (group.holesAt || group.eachEnd || group.pitchesMm || group.endFrom || group.edgeFrom) {
    return laidOut(group, place, lengthMm);
  }
  const assumed: string[] = [];
  const lines = linesOf(group, place, assumed);
  const columns = columnsOf(group, place);
  const along = alongOf(group, columns, lengthMm, assumed);
  if (group.hole.shape === 'slot') assumed.push('slot drawn with its length towards the edge');
  const holes = Array.from(
    { length: group.count },
    (_, at): PlacedHole => ({
      group,
      number: at + 1,
      alongMm: along[at % columns] ?? 0,
      acrossMm: lines[Math.floor(at / columns)] ?? 0,
    }),
  );
  return { holes, assumed };
}

/** Holes at both ends, in chains, one by one, or taken from the other end or edge. */
function laidOut(group: HoleGroup, place: HolePlace, lengthMm: number): HoleLayout {
  const { element, widthMm, thicknessMm } = place;
  const heel = element === 'leg' || element === 'flange';
  const face = { id: heel ? ('leg A' as const) : ('plate' as const), widthMm, thicknessMm, heel };
  const picked = { face, direction: group.slot ?? 'across', endFrom: group.endFrom ?? 'left' } as const;
  const laid = layGroup(group, picked, { lengthMm, even: false });
  return {
    holes: laid.holes.map(({ center, index }) => ({
      group,
      number: index,
      alongMm: center.x,
      acrossMm: heel ? widthMm - center.y : center.y,
    })),
    assumed: laid.readings.map((reading) => `drawn ${reading}`),
  };
}

/** True where the holes stand in two lines: in a plate, where a gage is given between them. */
export function inTwoLines({ gageMm, count }: HoleGroup, { element }: HolePlace): boolean {
  return element === 'plate' && gageMm !== undefined && count > 1;
}

/** How many holes stand one after the other along the part, of those at both ends at one of them. */
export function columnsOf(group: HoleGroup, place: HolePlace): number {
  const perEnd = group.eachEnd ? group.count / 2 : group.count;
  return Math.ceil(perEnd / (inTwoLines(group, place) ? 2 : 1));
}

/** Distances of the hole lines from the edge at the throat: the far edge of a plate, the toe of a leg or flange. */
function linesOf(group: HoleGroup, place: HolePlace, assumed: string[]): number[] {
  const { edgeMm, widthMm } = place;
  const twoLines = inTwoLines(group, place);
  const gageMm = twoLines ? (group.gageMm ?? 0) : 0;
  if (edgeMm === undefined) assumed.push('no edge distance in the row, drawn in the middle');
  const firstMm = edgeMm ?? (widthMm - gageMm) / 2;
  return twoLines ? [firstMm, firstMm + gageMm] : [firstMm];
}

function alongOf(group: HoleGroup, columns: number, lengthMm: number, assumed: string[]): number[] {
  const { endMm, pitchMm } = group;
  if (pitchMm === undefined && columns > 1) assumed.push('no pitch in the row, drawn evenly');
  if (endMm === undefined) assumed.push('no end distance in the row, drawn evenly');
  const firstMm = endMm ?? firstOf(columns, pitchMm, lengthMm);
  const stepMm = pitchMm ?? (columns > 1 ? (lengthMm - 2 * firstMm) / (columns - 1) : 0);
  return Array.from({ length: columns }, (_, at) => firstMm + at * stepMm);
}

function firstOf(columns: number, pitchMm: number | undefined, lengthMm: number): number {
  return pitchMm === undefined ? lengthMm / (columns + 1) : (lengthMm - (columns - 1) * pitchMm) / 2;
}
