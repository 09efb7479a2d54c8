import type { Grade } from '../material/grade.js';
import type { EdgeKind } from '../rule/edgeDistance.js';
import type { BoltSize } from '../rule/boltSize.js';
import type { AnySection } from '../section/section.js';
import type { Hole } from '../tooling/hole.js';
import type { Finding } from '../press/finding.js';

/** A set of like holes in a part. Distances are in mm and undefined where the row gives none. */
export interface HoleGroup {
  /** `Hole`, or `Hole 2` for a further group. */
  title: string;
  hole: Hole;
  count: number;
  bolt?: BoltSize;
  edgeMm?: number;
  endMm?: number;
  edgeKind?: EdgeKind;
  pitchMm?: number;
  gageMm?: number;
  leg?: string;
}

/** Like notches, taken at an edge. */
export interface Notches {
  widthMm: number;
  depthMm: number;
  count: number;
}

/** Corners cut off along a straight line. */
export interface CornerClips {
  /** Along the length of the part. */
  alongMm: number;
  /** Across it. */
  acrossMm: number;
  count: number;
}

export interface Bends {
  lengthMm: number;
  count: number;
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
  press?: string;
  /** Cells that could not be read. */
  problems: Finding[];
  /** What was understood and assumed, for the note. */
  understood: string[];
}
