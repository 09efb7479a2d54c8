import { refuse } from '../inputError.js';
import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { evenPlacesMm } from './evenPlaces.js';
import { holeCountStep, layoutSource } from './holeCountStep.js';

export interface HoleRow {
  lengthMm: number;
  endMm: number;
  /** At least so many holes. */
  count: number;
  /** More holes where the pitch would be greater. */
  greatestPitchMm?: number;
  /** Of sentences. */
  unit: LengthUnit;
}

const mostHoles = 1000;
/** A pitch that is the greatest but for rounding is within it. */
const roundingShare = 1e-9;

/**
 * Where the holes of one row lie, evenly spaced, the outer ones as far from both ends.
 *
 * Formula: n = max(count, ⌈(L − 2 · e) / greatest pitch⌉ + 1); pitch = (L − 2 · e) / (n − 1)
 * @param row length of the part, distance of the outer holes from the ends, greatest pitch, in mm; the least count of
 *   holes; `unit` of sentences
 * @param working collects the steps when given
 * @returns distances in mm from the left end to the centers, in order
 * Valid for up to 1,000 holes; one hole lies in the middle. Throws `invalid` where the distance from the ends leaves
 * nothing between the outer holes, and where the greatest pitch asks for more holes than that.
 * @example rowHolesMm({ lengthMm: 500, endMm: 50, count: 2, greatestPitchMm: 150, unit: 'mm' }) // [50, 183.3…, 316.6…, 450]
 * Source: common practice, no source.
 */
export function rowHolesMm(row: HoleRow, working?: Working): number[] {
  const { lengthMm, endMm, unit } = row;
  const count = countFor(row);
  const even = { over: 'Length', overMm: lengthMm, from: 'End', fromMm: endMm, count, unit };
  const places = evenPlacesMm(even);
  const [first = 0, second] = places;
  if (second !== undefined) reportPitch(row, count, second - first, working);
  holeCountStep(count, working);
  return places;
}

function countFor({ lengthMm, endMm, count, greatestPitchMm, unit }: HoleRow): number {
  if (greatestPitchMm === undefined) return count;
  const spaces = Math.ceil(((lengthMm - 2 * endMm) / greatestPitchMm) * (1 - roundingShare));
  if (spaces + 1 > mostHoles) {
    const size = `${formatLength(greatestPitchMm, unit)} ${unit}`;
    const problem = `a pitch of ${size} at most asks for ${spaces + 1} holes.`;
    return refuse('Greatest pitch', size, problem, `Give a greater one: at most ${mostHoles} holes.`);
  }
  return Math.max(count, spaces + 1);
}

function reportPitch(row: HoleRow, count: number, pitchMm: number, working?: Working): void {
  const { lengthMm, endMm, greatestPitchMm } = row;
  const values = [
    lengthValue('L', 'length of the part', lengthMm),
    lengthValue('e', 'from each end to the outer hole', endMm),
    { symbol: 'n', meaning: 'holes', kind: 'count', value: count } as const,
  ];
  const greatest =
    greatestPitchMm === undefined ? [] : [lengthValue('greatest', 'greatest pitch', greatestPitchMm)];
  const more = count > row.count ? [`${count - row.count} more than ${row.count}, for the pitch.`] : [];
  working?.step({
    title: 'Pitch',
    formula: 'p = (L − 2 · e) / (n − 1)',
    values: [...values, ...greatest],
    result: lengthValue('p', 'pitch, center to center', pitchMm),
    source: layoutSource,
    ...(more.length > 0 ? { cautions: more } : {}),
  });
}
