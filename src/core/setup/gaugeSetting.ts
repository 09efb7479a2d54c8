import type { Range } from '../check/range.js';
import type { Point } from '../part/point.js';
import type { Plate, Position, StopSide, Turn, Turns } from './way.js';

/** How far the gauges of a press go; a stop that is not there has none. */
export interface GaugeReach {
  fence: Range;
  leftStop?: Range;
  rightStop?: Range;
}

export interface GaugeHole extends Point {
  /**
   * Meets a hole of another part: all such holes are made the same way round, with one end at the stop. Where the hole
   * is so much larger than its bolt that the length may differ, the other end may be at a stop, too.
   */
  mating?: 'one end' | 'either end';
}

export interface GaugeInput extends Plate {
  holes: readonly GaugeHole[];
  turns: Turns;
  reach: GaugeReach;
}

/** A hole, by its place in the list, and how the part lies for it. */
export interface GaugeHit {
  hole: number;
  turn: Turn;
}

/** One position of stop and fence, and every hole that it gives. */
export interface GaugeSetting extends Position {
  stop: StopSide;
  hits: readonly GaugeHit[];
}

export interface GaugeSettings {
  /** In an order of short moves. */
  settings: readonly GaugeSetting[];
  /** Holes that no setting reaches, by their place in the list: they are marked out by hand. */
  marked: readonly number[];
}
