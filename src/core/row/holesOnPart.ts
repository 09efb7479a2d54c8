import type { Finding } from '../press/finding.js';
import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';
import { leastDimensionMm } from '../tooling/hole.js';
import { atMost } from '../atMost.js';
import { columnsOf, inTwoLines } from './holeLayout.js';
import type { HolePlace } from './holePlace.js';
import type { HoleGroup, RowJob } from './rowJob.js';

/** Of the part, what says whether its holes lie on it. */
export type Piece = Pick<RowJob, 'lengthMm' | 'miterLeftRad' | 'miterRightRad' | 'cutBy'>;

export interface OnPart {
  /** Holes that do not lie on the part, whatever the row leaves open. */
  findings: Finding[];
  /** True where they do not lie on it across. */
  offAcross: boolean;
  /** From the last hole to the far end, where it is known and less than at the end that the row gives. */
  farEndMm?: number;
}

/**
 * Whether the holes of a group lie on the part by its length and width: the least they can reach is held against it, so
 * that nothing is found where the row leaves their place open. `last = end + (columns − 1) · pitch`, or
 * `(columns − 1) · pitch` between the first and the last without an end distance. Source: geometry.
 */
export function holesOnPart(group: HoleGroup, place: HolePlace, piece: Piece, unit: LengthUnit): OnPart {
  const size = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
  const finding = (text: string): Finding => ({
    verdict: 'Check input',
    governs: group.title,
    note: `${group.title}: ${text}`,
  });
  // Holes at both ends, in chains and one by one are held against the part by its layout.
  if (group.eachEnd || group.pitchesMm || group.holesAt) return { findings: [], offAcross: false };
  const across = offAcross(group, place, size);
  const along = alongPart(group, place, piece);
  const off = along && offAlong(group, place, along, size);
  return {
    findings: [off, across].flatMap((text) => (text === undefined ? [] : [finding(text)])),
    offAcross: across !== undefined,
    ...(along && !off && isFarEndNearer(group, along) ? { farEndMm: along.lengthMm - along.reachMm } : {}),
  };
}

interface Along {
  lengthMm: number;
  /** The longest the part can be where its length may be that of the short side of miters. */
  longestMm: number;
  columns: number;
  /** From the end that the row gives to the last hole; without one the least that the holes need with their halves. */
  reachMm: number;
  /** The row says where the last hole lies, and the end there is square. */
  certain: boolean;
}

function alongPart(group: HoleGroup, place: HolePlace, piece: Piece): Along | undefined {
  const { endMm, pitchMm, gageMm } = group;
  const { lengthMm, miterLeftRad, miterRightRad } = piece;
  // A gage of a web may be between two lines, or from the back of the channel.
  if (lengthMm === undefined || (place.element === 'web' && gageMm !== undefined)) return undefined;
  const columns = columnsOf(group, place);
  const betweenMm = (columns - 1) * (pitchMm ?? 0);
  const mitersMm = place.widthMm * (Math.tan(miterLeftRad) + Math.tan(miterRightRad));
  return {
    lengthMm,
    longestMm: lengthMm + mitersMm,
    columns,
    reachMm: endMm === undefined ? betweenMm + leastDimensionMm(group.hole) / 2 : endMm + betweenMm,
    certain: endMm !== undefined && (columns === 1 || pitchMm !== undefined) && mitersMm === 0,
  };
}

function isFarEndNearer({ endMm = 0 }: HoleGroup, { certain, lengthMm, reachMm }: Along): boolean {
  return certain && !atMost(endMm, lengthMm - reachMm);
}

function offAlong(
  group: HoleGroup,
  place: HolePlace,
  { lengthMm, longestMm, columns, reachMm }: Along,
  size: (mm: number) => string,
): string | undefined {
  const { count, endMm, pitchMm, hole } = group;
  if (atMost(reachMm, longestMm - leastDimensionMm(hole) / 2)) return undefined;
  const part = `the part is ${size(lengthMm)} long.`;
  if (columns === 1 || pitchMm === undefined) {
    if (endMm === undefined) return `the hole is larger than the part; ${part} Correct Hole or Length.`;
    const over = endMm > lengthMm ? 'lies beyond the part' : 'runs over the far end';
    return `a hole ${size(endMm)} from the end ${over}; ${part} Correct Length or End.`;
  }
  const lines = inTwoLines(group, place) ? ' in two lines' : '';
  const holes = `${count} holes${lines} at pitch ${size(pitchMm)}`;
  const other = otherWay(group, place);
  if (endMm === undefined) {
    const needMm = (columns - 1) * pitchMm;
    return `${holes} need ${size(needMm)} from the first to the last; ${part} Correct Length or Pitch${other}.`;
  }
  const over = reachMm > lengthMm ? '' : ', so the last runs over the far end';
  return `${holes} from ${size(endMm)} reach to ${size(reachMm)}${over}; ${part} Correct Length, End or Pitch${other}.`;
}

/** How holes that do not stand one after the other are written. */
function otherWay(group: HoleGroup, { element }: HolePlace): string {
  const [, at = '1'] = /(\d+)$/.exec(group.title) ?? [];
  const next = `Hole ${Number(at) + 1}`;
  if (element === 'leg' || element === 'flange')
    return `, or give those of the other ${element} under ${next}`;
  if (element !== 'plate') return '';
  return group.gageMm === undefined
    ? ', or give Gage where they stand in two lines'
    : `, or give those of further lines under ${next}`;
}

/** The distances across that the row gives, beyond the width of the plate, leg, web or flange. */
function offAcross(
  group: HoleGroup,
  { element, widthMm }: HolePlace,
  size: (mm: number) => string,
): string | undefined {
  const { edgeMm, gageMm, hole } = group;
  const isOff = (mm: number | undefined): mm is number =>
    mm !== undefined && !atMost(mm, widthMm - leastDimensionMm(hole) / 2);
  const wide = `the ${element === 'plate' ? 'part' : element} is ${size(widthMm)} wide.`;
  const over = (mm: number) => (mm < widthMm ? 'puts the hole over the far edge' : 'does not lie on it');
  if (isOff(edgeMm)) return `edge distance ${size(edgeMm)} ${over(edgeMm)}; ${wide} Correct Edge.`;
  if (isOff(gageMm)) return `gage ${size(gageMm)} ${over(gageMm)}; ${wide} Correct Gage.`;
  if (element !== 'plate' || edgeMm === undefined || gageMm === undefined) return undefined;
  if (group.count === 1 || !isOff(edgeMm + gageMm)) return undefined;
  return `edge distance ${size(edgeMm)} and gage ${size(gageMm)} reach to ${size(edgeMm + gageMm)}; ${wide} Correct Edge or Gage.`;
}
