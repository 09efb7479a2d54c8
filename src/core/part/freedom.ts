import type { Point } from './point.js';
import { type Box, cornersOf, type Shape, sweep, translate } from './shape.js';

/** A shape that is not placed: all the places it may take, and the outermost of them. */
export interface Freedom {
  readonly shape: Shape;
  readonly swept: Shape;
  /** At the corners of the box, in their order around it. */
  readonly outermost: readonly { readonly offset: Point; readonly shape: Shape }[];
}

export function freedomOf(shape: Shape, free: Box): Freedom {
  const outermost = cornersOf(free).map((offset) => ({
    offset,
    shape: translate(shape, offset.x, offset.y),
  }));
  return { shape, swept: sweep(shape, free), outermost };
}
