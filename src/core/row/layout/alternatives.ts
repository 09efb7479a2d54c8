import type { RowJob, HoleGroup, PartEnd, PartPlace, PartSide } from '../job/rowJob.js';
import type { AnySection } from '../../section/section.js';
import type { FaceId } from '../../part/part.js';
import type { LengthUnit } from '../../quantity/units.js';
import { lineCount } from './across.js';
import { type FaceSize, facesOf } from '../job/faces.js';
import { facesOfLeg, isAsWide } from './facesOfLeg.js';

/** Work whose cells leave several places or directions: the cell that would settle it, and how many there are. */
export interface Choice {
  cell: 'Leg' | 'Slot' | 'End' | 'Clip at' | 'Long side' | 'Miter leg';
  options: number;
  group?: number;
}

export type Corner = Extract<PartPlace, { at: 'corner' }> & { face: FaceId };

/** One of everything a row leaves to choose. */
export interface Picked {
  groups: { face: FaceSize; direction: 'along' | 'across'; endFrom: PartEnd }[];
  corners: readonly Corner[];
  longSide: Record<PartEnd, PartSide>;
  /** The faces that are mitered. */
  mitered: readonly FaceId[];
}

/** What a row leaves to choose: the choices, and what each combination of them picks. */
export interface Alternatives {
  choices: readonly Choice[];
  pick: (options: readonly number[]) => Picked;
}

export type RowToPlace = Pick<
  RowJob,
  'groups' | 'clips' | 'notches' | 'longSide' | 'miterLeg' | 'miterLeftRad' | 'miterRightRad' | 'unclear'
> & {
  section: AnySection;
};

/** The choices a row leaves. */
export function alternativesOf(row: RowToPlace, unit: LengthUnit): Alternatives {
  const choices: Choice[] = [];
  const from = <Option>(choice: Omit<Choice, 'options'>, options: readonly Option[]) => {
    const at = options.length > 1 ? choices.push({ ...choice, options: options.length }) - 1 : -1;
    return (picked: readonly number[]): Option => options[at < 0 ? 0 : (picked[at] ?? 0)] as Option;
  };
  const groups = row.groups.map((group, index) => ({
    face: from({ cell: 'Leg', group: group.number }, facesOfGroup(row, index, unit)),
    direction: from({ cell: 'Slot', group: group.number }, directionsOf(group)),
    endFrom: from({ cell: 'End', group: group.number }, endsOf(row, index)),
  }));
  const corners = from({ cell: 'Clip at' }, cornerSets(row, unit));
  const left = from({ cell: 'Long side' }, sidesOf(row, 'left'));
  const right = from({ cell: 'Long side' }, sidesOf(row, 'right'));
  const mitered = from({ cell: 'Miter leg' }, miteredFaces(row, unit));
  return {
    choices,
    pick: (options) => ({
      groups: groups.map(({ face, direction, endFrom }) => ({
        face: face(options),
        direction: direction(options),
        endFrom: endFrom(options),
      })),
      corners: corners(options),
      longSide: { left: left(options), right: right(options) },
      mitered: mitered(options),
    }),
  };
}

/** The faces a group may be in; the first of several that are alike stands for all. */
function facesOfGroup(row: RowToPlace, index: number, unit: LengthUnit): readonly FaceSize[] {
  const { section, groups } = row;
  const group = groups[index];
  const faces = group ? fitting(facesOfLeg(section, group.leg, unit), group, unit) : [];
  if (faces.length < 2 || index > 0 || tellsFacesApart(row)) return faces;
  return faces.filter(
    (face, at) =>
      !faces.slice(0, at).some(({ widthMm, heel }) => widthMm === face.widthMm && heel === face.heel),
  );
}

/**
 * Holes fit a face that they lie on; a distance from the heel and one from the toe fit only a leg that is as wide as both.
 */
function fitting(faces: readonly FaceSize[], group: HoleGroup, unit: LengthUnit): readonly FaceSize[] {
  const { edgeMm, gageMm } = group;
  const isSum = ({ heel, widthMm }: FaceSize) =>
    !heel || edgeMm === undefined || gageMm === undefined || isAsWide(widthMm, edgeMm + gageMm, unit);
  const fit = faces.filter((face) => isSum(face) && liesOn(face, group));
  return fit.length > 0 ? fit : faces;
}

/** Whether the distances that a row gives across a face place its holes on it. */
function liesOn(face: FaceSize, group: HoleGroup): boolean {
  const { widthMm, heel } = face;
  const { edgeMm = 0, gageMm = 0, holesAt } = group;
  if (holesAt) return holesAt.every(({ yMm }) => yMm <= widthMm);
  if (heel) return Math.max(edgeMm, gageMm) <= widthMm;
  return edgeMm + (lineCount(group, face) === 2 ? gageMm : 0) <= widthMm;
}

/** Whether anything of the row says in which of like faces it is, so that another in either is not the same. */
function tellsFacesApart({ groups, clips, notches, miterLeftRad, miterRightRad }: RowToPlace): boolean {
  if (clips || miterLeftRad > 0 || miterRightRad > 0) return true;
  const others = groups.slice(1);
  return (
    others.some(({ leg }) => leg !== undefined) || (notches?.at ?? []).some(({ leg }) => leg !== undefined)
  );
}

function directionsOf({ hole, slot }: HoleGroup): ('along' | 'across')[] {
  if (slot !== undefined) return [slot];
  return hole.shape === 'round' || hole.shape === 'square' ? ['along'] : ['across', 'along'];
}

/** Drawings are not dimensioned finer. */
const sameSpotMm = 0.5;

/**
 * The end that End is taken from. Like holes at both ends, each with the distance from its own end, are an everyday
 * brace: a further group at the distance of an earlier one, or of one that gives none or cannot be read, may be from the
 * right end.
 */
function endsOf({ groups, unclear = [] }: RowToPlace, index: number): PartEnd[] {
  const group = groups[index];
  if (!group || group.endMm === undefined || group.endFrom !== undefined || group.eachEnd) {
    return [group?.endFrom ?? 'left'];
  }
  const { endMm } = group;
  const isLike = (other: HoleGroup) =>
    other.endFrom === undefined &&
    other.holesAt === undefined &&
    (other.endMm === undefined || Math.abs(other.endMm - endMm) < sameSpotMm);
  const isUnread = unclear.some((cell) => cell.group !== undefined && cell.group < group.number);
  return isUnread || groups.slice(0, index).some(isLike) ? ['left', 'right'] : ['left'];
}

/** The sets of corners that may be clipped: of an angle the corners at the toes. */
function cornerSets({ clips, section }: RowToPlace, unit: LengthUnit): Corner[][] {
  if (!clips) return [[]];
  const faces = facesOf(section);
  const of = (place: Omit<Corner, 'face'>): Corner => {
    const [face] = facesOfLeg(section, place.leg, unit);
    return { ...place, face: face?.id ?? 'plate' };
  };
  if (clips.at) return [clips.at.map(of)];
  const sides: PartSide[] = section.kind === 'flat' ? ['bottom', 'top'] : ['toe'];
  const corners = faces.flatMap(({ id }) =>
    sides.flatMap((side) =>
      (['left', 'right'] as const).map((end): Corner => ({ at: 'corner', end, side, face: id })),
    ),
  );
  return setsOf(corners, clips.count);
}

function setsOf<Item>(items: readonly Item[], count: number): Item[][] {
  if (count >= items.length) return [[...items]];
  if (count === 0) return [[]];
  return items.flatMap((item, at) =>
    at + count > items.length ? [] : setsOf(items.slice(at + 1), count - 1).map((rest) => [item, ...rest]),
  );
}

function sidesOf(row: RowToPlace, end: PartEnd): PartSide[] {
  const heel = row.section.kind === 'angle';
  const given = row.longSide?.[end];
  if (given !== undefined) return [given];
  const rad = end === 'left' ? row.miterLeftRad : row.miterRightRad;
  const both: PartSide[] = heel ? ['heel', 'toe'] : ['bottom', 'top'];
  return rad > 0 ? both : both.slice(0, 1);
}

/** A miter of an angle is in one of its legs. */
function miteredFaces(
  { section, miterLeg, miterLeftRad, miterRightRad }: RowToPlace,
  unit: LengthUnit,
): FaceId[][] {
  const faces = facesOf(section).map(({ id }) => id);
  if (section.kind !== 'angle' || (miterLeftRad === 0 && miterRightRad === 0)) return [faces];
  if (miterLeg === 'both') return [faces];
  return facesOfLeg(section, miterLeg, unit).map(({ id }) => [id]);
}
