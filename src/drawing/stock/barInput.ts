import type { LengthUnit } from '../../core/quantity/units.js';
import type { CutBar } from '../../core/stock/list/jobPlan.js';

/** A bar of a plan, and what its drawing needs besides; lengths in mm. */
export interface BarInput {
  bar: CutBar;
  /** Of the bar, in the plane of the miters. */
  widthMm: number;
  trimMm: number;
  gripMm: number;
  unit: LengthUnit;
  /** Tells each running length, where a list is not read but worked by. */
  everyCut?: boolean;
  room: BarRoom;
}

export interface BarRoom {
  /** Of the drawing, in pixels. */
  width: number;
  /** Of the strip, in pixels. */
  height: number;
  /** The bar that fills the width: bars beside each other have one scale. */
  longestMm: number;
}
