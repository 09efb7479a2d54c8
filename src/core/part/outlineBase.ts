import type { Cause, Edge } from './outline.js';
import type { End, FaceEnd, Miter, OutlineInput, OutlineProblem, Side } from './outlineInput.js';
import type { Point } from './point.js';
import { toleranceMm } from './tolerance.js';

/** A boundary of a face before its cuts, from corner to corner. */
export type BaseSide = Edge;

/** The four sides counter-clockwise from the bottom; corner `n` is where side `n` begins. */
export type BaseSides = readonly [bottom: BaseSide, right: BaseSide, top: BaseSide, left: BaseSide];
export type SideNumber = 0 | 1 | 2 | 3;

/** The side number of a long edge, of an end, and of the corner between them. */
export const sideOf: Record<Side | End, SideNumber> = { bottom: 0, right: 1, top: 2, left: 3 };

export function cornerOf(end: End, side: Side): SideNumber {
  if (side === 'bottom') return end === 'left' ? 0 : 1;
  return end === 'right' ? 2 : 3;
}

/** Where an end lies at a place across the face: a miter moves it inward by the distance from its long side · tan θ. */
export function endX(input: OutlineInput, end: End, y: number): number {
  const inward = input[end].miter ? miterInward(input[end].miter, input.widthMm, y) : 0;
  return end === 'left' ? inward : input.lengthMm - inward;
}

function miterInward({ rad, long }: Miter, widthMm: number, y: number): number {
  return (long === 'bottom' ? y : widthMm - y) * Math.tan(rad);
}

/** The four sides, or why the miters leave none. Miters may meet in a point: a triangle is a part, with three sides. */
export function baseSides(input: OutlineInput): BaseSides | OutlineProblem {
  const { lengthMm } = input;
  const corners = cornersOfBase(input);
  const [bottomLeft, bottomRight, topRight, topLeft] = corners;
  const bottomMm = bottomRight.x - bottomLeft.x;
  const topMm = topRight.x - topLeft.x;
  const least = Math.min(bottomMm, topMm);
  if (least < -toleranceMm || Math.max(bottomMm, topMm) <= toleranceMm) {
    return {
      problem: 'miters meet',
      cause: endCause('left', input.left),
      otherCause: endCause('right', input.right),
      neededMm: lengthMm - least,
      availableMm: lengthMm,
    };
  }
  return sidesBetween(input, corners);
}

function cornersOfBase(input: OutlineInput): [Point, Point, Point, Point] {
  const { widthMm } = input;
  return [
    { x: endX(input, 'left', 0), y: 0 },
    { x: endX(input, 'right', 0), y: 0 },
    { x: endX(input, 'right', widthMm), y: widthMm },
    { x: endX(input, 'left', widthMm), y: widthMm },
  ];
}

function sidesBetween(input: OutlineInput, [a, b, c, d]: [Point, Point, Point, Point]): BaseSides {
  const { bottom, top, left, right } = input;
  return [
    { from: a, to: b, cause: { is: bottom.is }, kind: bottom.kind },
    { from: b, to: c, cause: endCause('right', right), kind: right.kind },
    { from: c, to: d, cause: { is: top.is }, kind: top.kind },
    { from: d, to: a, cause: endCause('left', left), kind: left.kind },
  ];
}

function endCause(end: End, { miter }: FaceEnd): Cause {
  if (miter && miter.rad > 0) return { is: end === 'left' ? 'miter left' : 'miter right' };
  return { is: end === 'left' ? 'left end' : 'right end' };
}
