import { atMost } from '../../atMost.js';
import type { FaceEnd, LongEdge, Notch, NotchPlace, OutlineInput, Side } from '../../part/outlineInput.js';
import type { EdgeKind } from '../../rule/edgeDistance.js';
import { isCutBySaw } from '../../press/shearStation.js';
import type { LengthUnit } from '../../quantity/units.js';
import type { PartEnd, PartPlace, PartSide, RowJob } from '../job/rowJob.js';
import type { RowWithSection } from '../job/readyRow.js';
import type { Corner, Picked } from './alternatives.js';
import type { FaceSize } from '../job/faces.js';
import { facesOfLeg } from './facesOfLeg.js';

/** A notch, clip or end made on a press is a sheared edge. */
const cutKind: EdgeKind = 'sheared';

/** Who burns the part burns its notches and clips, too; a saw makes none. */
function kindOfCuts(row: Pick<RowWithSection, 'section' | 'cutBy'>): EdgeKind {
  return row.cutBy === 'burn' ? endKindOf(row) : cutKind;
}

/** The heel of a leg lies at the bottom of its face, the toe at the top. */
export function sideOf(side: PartSide): Side {
  return side === 'bottom' || side === 'heel' ? 'bottom' : 'top';
}

/** How the ends of a part are made, where no cell says it otherwise for a group of holes. */
export function endKindOf({ section, cutBy }: Pick<RowWithSection, 'section' | 'cutBy'>): EdgeKind {
  const by = cutBy ?? (isCutBySaw(section) ? 'saw' : 'press');
  return by === 'press' || by === 'bought' ? cutKind : 'machine cut';
}

/** The widest flat that is sold as bar, 8 in: AISC Manual Part 1, plate products (from memory). */
const widestBarMm = 203.2;

/** How the long edges are made: a plate's and a wide flat's are sheared unless the shop cuts it from bar, those of shapes are rolled. */
export function longEdgeKindOf({ section, stock }: Pick<RowWithSection, 'section' | 'stock'>): EdgeKind {
  if (section.kind !== 'flat' || stock === 'from bar') return 'rolled';
  return section.form === 'plate' || !atMost(section.widthMm, widestBarMm) ? 'sheared' : 'rolled';
}

/** What the outline of a face is made of, for one of the choices a row leaves. */
export function faceOutline(
  row: RowWithSection,
  face: FaceSize,
  picked: Picked,
  lengthMm: number,
  unit: LengthUnit,
): OutlineInput {
  const long = longEdgeKindOf(row);
  const bottom: LongEdge = face.heel ? { is: 'heel', kind: 'none' } : { is: 'bottom edge', kind: long };
  const top: LongEdge = { is: face.heel ? 'toe' : 'top edge', kind: long };
  return {
    lengthMm: lengthMm - shortened(row, face, picked, 'left') - shortened(row, face, picked, 'right'),
    widthMm: face.widthMm,
    bottom,
    top,
    left: endOf(row, face, picked, 'left'),
    right: endOf(row, face, picked, 'right'),
    clips: picked.corners.filter((corner) => corner.face === face.id).map((corner) => clipOf(row, corner)),
    notches: notchesOf(row, face, unit),
  };
}

function endOf(row: RowWithSection, face: FaceSize, { mitered, longSide }: Picked, end: PartEnd): FaceEnd {
  const kind = endKindOf(row);
  const rad = miterOf(row, end);
  if (rad === 0 || !mitered.includes(face.id)) return { kind };
  return { kind, miter: { rad, long: sideOf(longSide[end]) } };
}

function miterOf({ miterLeftRad, miterRightRad }: RowJob, end: PartEnd): number {
  return end === 'left' ? miterLeftRad : miterRightRad;
}

/** Where the toe of the other leg keeps the long point, the leg that is not mitered ends at the heel. */
export function shortened(row: RowWithSection, face: FaceSize, picked: Picked, end: PartEnd): number {
  const { section } = row;
  if (section.kind !== 'angle' || picked.mitered.includes(face.id)) return 0;
  if (sideOf(picked.longSide[end]) === 'bottom') return 0;
  const otherMm = face.id === 'leg A' ? section.legBMm : section.legAMm;
  return otherMm * Math.tan(miterOf(row, end));
}

function clipOf(row: RowWithSection, { end, side }: Corner) {
  const { alongMm = 0, acrossMm = 0 } = row.clips ?? {};
  return { end, side: sideOf(side), alongMm, acrossMm, kind: kindOfCuts(row) };
}

/** The notches whose place the row gives. */
function notchesOf(row: RowWithSection, face: FaceSize, unit: LengthUnit): Notch[] {
  const { section, notches } = row;
  if (!notches?.at) return [];
  const { widthMm, depthMm, at } = notches;
  return at
    .filter((place) => facesOfLeg(section, place.leg, unit)[0]?.id === face.id)
    .flatMap((place) => {
      const notchPlace = placeOf(place, face);
      return notchPlace
        ? [{ shape: 'rectangle' as const, place: notchPlace, widthMm, depthMm, kind: kindOfCuts(row) }]
        : [];
    });
}

/** Undefined for a notch that may lie anywhere along its edge. */
function placeOf(place: PartPlace, face: FaceSize): NotchPlace | undefined {
  switch (place.at) {
    case 'corner':
      return { at: 'corner', end: place.end, side: sideOf(place.side) };
    case 'end':
      return { at: 'end', end: place.end, centerMm: place.fromMm ?? face.widthMm / 2 };
    case 'edge':
      return place.fromMm === undefined
        ? undefined
        : { at: 'edge', side: sideOf(place.side), centerMm: place.fromMm };
  }
}
