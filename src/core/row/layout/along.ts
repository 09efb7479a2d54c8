import { leastDimensionMm } from '../../tooling/hole.js';
import type { HoleGroup, PartEnd } from '../job/rowJob.js';

/** Where the holes of a line lie along the part: how far each may move from there, and how that was read. */
export interface Along {
  xMm: number;
  /** How far the hole may lie to the left and to the right of there; 0 where it is given. */
  leftMm: number;
  rightMm: number;
}

export interface AlongLine {
  columns: readonly Along[];
  /** The distances between the holes are given. */
  rigid: boolean;
  reading?: 'evenly spaced' | 'at each end' | 'centered';
  missing: readonly ('End' | 'Pitch')[];
}

/** The part that a line of holes is on. */
export interface Bar {
  lengthMm: number;
  /** Spaces that the row does not give are even: the shop says so. */
  even: boolean;
}

/**
 * Where the holes of one line lie along a part, the first at the end that End is taken from. Without a pitch they are
 * read as evenly spaced between both ends; without an end distance as centered, or evenly spaced. What is read so may
 * as well lie anywhere that fits.
 */
export function alongLine(group: HoleGroup, columns: number, endFrom: PartEnd, bar: Bar): AlongLine {
  const fromLeft = lineFromLeft(group, columns, bar);
  if (endFrom === 'left') return fromLeft;
  return {
    ...fromLeft,
    columns: fromLeft.columns.map(({ xMm, leftMm, rightMm }) => ({
      xMm: bar.lengthMm - xMm,
      leftMm: rightMm,
      rightMm: leftMm,
    })),
  };
}

function lineFromLeft(group: HoleGroup, columns: number, bar: Bar): AlongLine {
  const { endMm } = group;
  const offsets = offsetsOf(group, columns);
  if (!offsets) return unspacedLine(group, columns, bar);
  if (endMm === undefined) return slidingLine(offsets, group, bar);
  return { columns: offsets.map((mm) => fixed(endMm + mm)), rigid: true, missing: [] };
}

function fixed(xMm: number): Along {
  return { xMm, leftMm: 0, rightMm: 0 };
}

/** How far each hole lies from the first; undefined where the row does not say. */
function offsetsOf({ pitchMm, pitchesMm }: HoleGroup, columns: number): number[] | undefined {
  const offsets = [0];
  for (let at = 1; at < columns; at += 1) {
    const spaceMm = pitchesMm?.[at - 1] ?? pitchMm;
    if (spaceMm === undefined) return undefined;
    offsets.push((offsets.at(-1) ?? 0) + spaceMm);
  }
  return offsets;
}

/** The line as a whole may lie anywhere that fits; it is read as centered. */
function slidingLine(offsets: readonly number[], group: HoleGroup, { lengthMm }: Bar): AlongLine {
  const roomMm = (lengthMm - (offsets.at(-1) ?? 0)) / 2;
  const freeMm = Math.max(0, roomMm - leastDimensionMm(group.hole) / 2);
  return {
    columns: offsets.map((mm) => ({ xMm: roomMm + mm, leftMm: freeMm, rightMm: freeMm })),
    rigid: true,
    reading: 'centered',
    missing: ['End'],
  };
}

/** The first hole is where End says; the others lie anywhere between it and the far end. */
function unspacedLine(group: HoleGroup, columns: number, { lengthMm, even }: Bar): AlongLine {
  const { endMm } = group;
  const firstMm = endMm ?? lengthMm / (columns + 1);
  const marginMm = leastDimensionMm(group.hole) / 2;
  // Beyond the middle there is no such distance left from the other end.
  const mirrored = firstMm <= lengthMm / 2;
  const lastMm = mirrored ? lengthMm - firstMm : Math.max(firstMm, lengthMm - marginMm);
  const stepMm = (lastMm - firstMm) / (columns - 1);
  const leastMm = endMm ?? marginMm;
  const settled = even && endMm !== undefined;
  const places = Array.from({ length: columns }, (_, at): Along => {
    const xMm = firstMm + at * stepMm;
    if (settled || (at === 0 && endMm !== undefined)) return fixed(xMm);
    const [leftMm, rightMm] = [xMm - leastMm, lengthMm - marginMm - xMm];
    return { xMm, leftMm: Math.max(0, leftMm), rightMm: Math.max(0, rightMm) };
  });
  return {
    columns: places,
    rigid: settled,
    reading: columns === 2 && endMm !== undefined && mirrored ? 'at each end' : 'evenly spaced',
    missing: endMm === undefined ? ['End', 'Pitch'] : ['Pitch'],
  };
}
