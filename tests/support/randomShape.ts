// Random holes for properties.
import fc from 'fast-check';
import { type Direction, holeShape } from '../../src/core/part/holeShape.js';
import type { Box } from '../../src/core/part/shape.js';
import type { Hole } from '../../src/core/tooling/hole.js';

const sizeMm = fc.double({ min: 5, max: 60, noNaN: true });
const placeMm = fc.oneof(fc.double({ min: -100, max: 100, noNaN: true }), fc.integer({ min: -10, max: 10 }));

export const anyHole: fc.Arbitrary<Hole> = fc.oneof(
  sizeMm.map((diameterMm): Hole => ({ shape: 'round', diameterMm })),
  fc
    .tuple(sizeMm, sizeMm)
    .map(([widthMm, more]): Hole => ({ shape: 'slot', widthMm, lengthMm: widthMm + more })),
  sizeMm.map((sideMm): Hole => ({ shape: 'square', sideMm })),
  fc.tuple(sizeMm, sizeMm).map(([widthMm, lengthMm]): Hole => ({ shape: 'rectangle', widthMm, lengthMm })),
  sizeMm.map((acrossFlatsMm): Hole => ({ shape: 'hexagon', acrossFlatsMm })),
);
export const anyDirection = fc.constantFrom<Direction>('along', 'across');
export const anyCenter = fc.record({ x: placeMm, y: placeMm });
export const anyShape = fc
  .tuple(anyHole, anyCenter, anyDirection)
  .map(([hole, center, direction]) => holeShape(hole, center, direction));

const spanMm = fc.oneof(fc.constant(0), fc.double({ min: 0, max: 80, noNaN: true }));
/** A point, a segment or a rectangle around or beside the center. */
export const anyFreedom: fc.Arbitrary<Box> = fc
  .record({ x: placeMm, y: placeMm, width: spanMm, height: spanMm })
  .map(({ x, y, width, height }) => ({ x0: x / 5, x1: x / 5 + width, y0: y / 5, y1: y / 5 + height }));
/** A place in a freedom, as shares of its sides. */
export const anyShares = fc.record({
  x: fc.double({ min: 0, max: 1, noNaN: true }),
  y: fc.double({ min: 0, max: 1, noNaN: true }),
});

export function placeIn({ x0, x1, y0, y1 }: Box, shares: { x: number; y: number }): { x: number; y: number } {
  return { x: x0 + (x1 - x0) * shares.x, y: y0 + (y1 - y0) * shares.y };
}
