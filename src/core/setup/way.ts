import type { Point } from '../part/point.js';

/** Which ways round a part may go to the gauges. */
export type Turns = 'none' | 'half' | 'flip';

/**
 * How a part lies on the table: as drawn; turned by half a turn, burr side still down; turned over about its length; or
 * turned over end for end.
 */
export type Turn = 'as it lies' | 'half turn' | 'over sideways' | 'over endways';

/** The side of the punch that a stop stands on. */
export type StopSide = 'left' | 'right';

/** How a hole is brought under the punch: the part lies so, and has an end at the stop of that side. */
export interface Way {
  turn: Turn;
  stop: StopSide;
}

const turnsOf: Record<Turns, readonly Turn[]> = {
  none: ['as it lies'],
  half: ['as it lies', 'half turn'],
  flip: ['as it lies', 'half turn', 'over sideways', 'over endways'],
};

/** The ways that are allowed, in the order in which they are preferred. */
export function waysOf(turns: Turns): readonly Way[] {
  const stops: readonly StopSide[] = ['left', 'right'];
  return stops.flatMap((stop) => turnsOf[turns].map((turn): Way => ({ turn, stop })));
}

/** The end of the part that is at the stop. */
export function endAtStop({ turn, stop }: Way): 'left' | 'right' {
  const endsSwap = turn === 'half turn' || turn === 'over endways';
  return (stop === 'left') === endsSwap ? 'right' : 'left';
}

/** The long edge of the part that is at the fence. */
export function edgeAtFence({ turn }: Way): 'bottom' | 'top' {
  return turn === 'half turn' || turn === 'over sideways' ? 'top' : 'bottom';
}

/** A plate from its left end and bottom edge. */
export interface Plate {
  lengthMm: number;
  widthMm: number;
}

/** What stop and fence are set to. */
export interface Position {
  stopMm: number;
  fenceMm: number;
}

/** In 1 mm: what the difference of two lengths leaves behind that is rounding. */
const digits = 1e6;
const rounded = (mm: number) => Math.round(mm * digits) / digits;

/** Where stop and fence stand when a hole is under the punch. */
export function positionOf({ x, y }: Point, way: Way, { lengthMm, widthMm }: Plate): Position {
  return {
    stopMm: rounded(endAtStop(way) === 'left' ? x : lengthMm - x),
    fenceMm: rounded(edgeAtFence(way) === 'bottom' ? y : widthMm - y),
  };
}
