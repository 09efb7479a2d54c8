import type { HolePlace } from '../../../core/row/holePlace.js';
import type { HoleGroup } from '../../../core/row/rowJob.js';

/** A hole where it lies: from the end at the stop and from the edge at the throat, in mm. */
export interface PlacedHole {
  group: HoleGroup;
  /** From 1. */
  number: number;
  alongMm: number;
  acrossMm: number;
}

export interface PlacedGroup {
  group: HoleGroup;
  place: HolePlace;
  holes: PlacedHole[];
  /** How they are made where they are not punched to size: `drilled`; empty where they are. */
  made: string;
  /** What the row does not say, and how it is drawn. */
  assumed: string[];
}

/**
 * The holes of a group along a part. Two lines where a plate has a gage; what the row leaves open is drawn evenly or in
 * the middle, and said.
 */
export function placedGroup(group: HoleGroup, place: HolePlace, lengthMm: number): Omit<PlacedGroup, 'made'> {
  const assumed: string[] = [];
  const lines = linesOf(group, place, assumed);
  const columns = Math.ceil(group.count / lines.length);
  const along = alongOf(group, columns, lengthMm, assumed);
  const holes = Array.from(
    { length: group.count },
    (_, at): PlacedHole => ({
      group,
      number: at + 1,
      alongMm: along[at % columns] ?? 0,
      acrossMm: lines[Math.floor(at / columns)] ?? 0,
    }),
  );
  return { group, place, holes, assumed };
}

/** Distances of the hole lines from the edge at the throat: the far edge of a plate, the toe of a leg or flange. */
function linesOf(group: HoleGroup, { edgeMm, widthMm, element }: HolePlace, assumed: string[]): number[] {
  const twoLines = element === 'plate' && group.gageMm !== undefined && group.count > 1;
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
