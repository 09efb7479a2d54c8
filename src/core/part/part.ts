import type { Outline } from './outline.js';
import type { Point } from './point.js';
import type { Box, Shape } from './shape.js';

/** A flat side of a part that can be worked. */
export type FaceId = 'plate' | 'leg A' | 'leg B' | 'web' | 'flange 1' | 'flange 2';

export interface Face {
  readonly id: FaceId;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly outline: Outline;
}

/** A hole of a group, counted within it. All holes of a group have one shape, in one direction. */
export interface PlacedHole {
  readonly face: FaceId;
  readonly group: number;
  readonly index: number;
  readonly center: Point;
  readonly shape: Shape;
  /** Where the center may lie, from `center`, if the row does not place the hole: an interval of everything that fits. */
  readonly free?: Box;
}

export interface BendLine {
  readonly face: FaceId;
  readonly from: Point;
  readonly to: Point;
  readonly insideRadiusMm: number;
}

/** A part as geometry, in mm: what the checks, the drawing and the set-up all read. */
export interface Part {
  readonly lengthMm: number;
  readonly faces: readonly Face[];
  readonly holes: readonly PlacedHole[];
  readonly bends: readonly BendLine[];
}
