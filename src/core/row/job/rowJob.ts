import type { Grade } from '../../material/grade.js';
import type { EdgeKind } from '../../rule/edgeDistance.js';
import type { BoltSize } from '../../rule/boltSize.js';
import type { AnySection } from '../../section/section.js';
import type { Hole } from '../../tooling/hole.js';
import type { Finding } from '../../check/finding.js';
import type { OpenCell } from '../../check/rowFact.js';
import type { Reading } from './reading.js';
import type { GroupField, RowField } from '../headings/heading.js';
import type { WorkText } from '../headings/workText.js';

/** The end of the part a distance is taken from, and a long edge. */
export type PartEnd = 'left' | 'right';
/** The long edges of a plate or web, or of a leg or flange. */
export type PartSide = 'bottom' | 'top' | 'heel' | 'toe';

/** Where work stands on a face; `leg` as typed where the section has several faces. */
export type PartPlace =
  | { at: 'corner'; end: PartEnd; side: PartSide; leg?: string }
  /** At an end; from the bottom edge or heel to its middle; in the middle of the end where that is not given. */
  | { at: 'end'; end: PartEnd; fromMm?: number; leg?: string }
  /** At a long edge; from the left end to its middle; anywhere along it where that is not given. */
  | { at: 'edge'; side: PartSide; fromMm?: number; leg?: string };

/** What makes a cut or a hole. */
export type CutBy = 'press' | 'saw' | 'burn' | 'bought';
export type HolesBy = 'punch' | 'drill' | 'burn';

/** The holes of a group as a list names them, the first group as 0: `Hole`, `Hole 2`. */
export function holeTitle(group = 0): string {
  return group === 0 ? 'Hole' : `Hole ${group + 1}`;
}

/** A set of like holes in a part. Distances are in mm and undefined where the row gives none. */
export interface HoleGroup {
  /** The columns it stands in, counted from 0: 1 for `Hole 2`, whether or not there is a `Hole`. */
  number: number;
  /** `Hole`, or `Hole 2` for a further group. */
  title: string;
  hole: Hole;
  /** All holes of the group, those at both ends together. */
  count: number;
  bolt?: BoltSize;
  /** The row says that these are no bolt holes. */
  noBolt?: true;
  edgeMm?: number;
  /** The long edge that Edge is taken from; the bottom edge, or the toe of a leg, where not given. */
  edgeFrom?: 'bottom' | 'top';
  endMm?: number;
  /** The end that End is taken from; the left end where not given. */
  endFrom?: PartEnd;
  /** Half of the holes at each end, mirrored: `2 each end` is a count of 4. */
  eachEnd?: true;
  edgeKind?: EdgeKind;
  endKind?: EdgeKind;
  /** One distance for all spaces of a line of holes. */
  pitchMm?: number;
  /** The spaces of a line of holes one by one, where Pitch is a chain. */
  pitchesMm?: readonly number[];
  gageMm?: number;
  leg?: string;
  /** The direction of a slot's length, or of a rectangle's longer side. */
  slot?: 'along' | 'across';
  /** Centers one by one: from the left end and from the bottom edge or heel. */
  holesAt?: readonly { xMm: number; yMm: number }[];
  by?: HolesBy;
  /** Work on the hole beyond the punch: it is told in the route. */
  finishing?: readonly ('countersink' | 'tap')[];
  /** The cells of its lengths as they stand in the sheet, for sentences that quote them. */
  typed?: Partial<Record<GroupField, string>>;
}

/** Like notches, taken at an edge. */
export interface Notches {
  widthMm: number;
  depthMm: number;
  count: number;
  at?: readonly PartPlace[];
}

/** Corners cut off along a straight line. */
export interface CornerClips {
  /** Along the length of the part. */
  alongMm: number;
  /** Across it. */
  acrossMm: number;
  count: number;
  at?: readonly Extract<PartPlace, { at: 'corner' }>[];
}

export interface Bends {
  lengthMm: number;
  count: number;
  /** Lines parallel to the end or edge named, `fromMm` away from it. */
  at?: readonly PartPlace[];
}

/** A text beside the cells that are read, and what it says of work. */
export interface TextOfWork extends WorkText {
  heading: string;
  text: string;
}

/** A row of a parts list as understood, in the core's units. */
export interface RowJob {
  qty: number;
  section?: AnySection;
  grade?: Grade;
  lengthMm?: number;
  groups: HoleGroup[];
  notches?: Notches;
  clips?: CornerClips;
  bends?: Bends;
  /** The miter at each end, from square; 0 is a square end. */
  miterLeftRad: number;
  miterRightRad: number;
  /** The steeper of the two. */
  miterRad: number;
  /** The side that keeps the long point of a miter, by end. */
  longSide?: Partial<Record<PartEnd, PartSide>>;
  /** The leg that is mitered, as typed: `both`, `long`, `short`, or its size. */
  miterLeg?: string;
  /** What cuts the part; the press where the row says nothing. */
  cutBy?: CutBy;
  galvanized?: true;
  /** Right-hand and left-hand pieces, where the quantity tells them apart. */
  hands?: { right: number; left: number };
  press?: string;
  /** The cells of its lengths as they stand in the sheet; those of holes are with their group. */
  typed?: Partial<Record<RowField, string>>;
  /** Headings of columns that are filled in, name or hold work, and are not read. */
  unread?: readonly string[];
  /** Texts that nothing reads and that name work: under Mark, Drawing, a remark. */
  texts?: readonly TextOfWork[];
  /** The section is called a bent plate, and no bend is given. */
  bendMissing?: true;
  /** Cells that are filled in and whose contents are not known: nothing that hangs on them is checked against anything. */
  unclear?: readonly OpenCell[];
  /** What is wrong with the cells of the row. */
  problems: Finding[];
  /** What was understood and assumed. */
  readings: Reading[];
}
