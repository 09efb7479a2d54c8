import type { AnySection } from '../../section/section.js';
import type { FaceSize } from './faces.js';
import type { HoleProcess } from './holeProcess.js';
import type { HoleGroup, RowJob } from './rowJob.js';

/** A row whose section and grade were read. */
export interface ReadRow extends RowJob {
  section: AnySection;
  grade: NonNullable<RowJob['grade']>;
  /** What a plate of the list is cut from, where the shop says so: its long edges are rolled or sheared. */
  stock?: 'from bar' | 'from sheet';
}

/** A row whose section was read: enough to lay it out. */
export type RowWithSection = Omit<ReadRow, 'grade'>;

/** A hole group in a face, and how it is made there. */
export interface PlacedGroup {
  group: HoleGroup;
  /** The number of the group in the row. */
  index: number;
  face: FaceSize;
  /** Of the face where the holes are: a flange tapers. */
  thicknessMm: number;
  process: HoleProcess;
}

/** A hole group in every face it may be in; none of a solid bar, whose holes are drilled. */
export interface PlacedHoles {
  group: HoleGroup;
  index: number;
  faces: readonly PlacedGroup[];
}

/** A row with the faces its holes may be in. */
export interface ReadyRow extends ReadRow {
  massKg?: number;
  places: readonly PlacedHoles[];
}
