import { toleranceMm } from './tolerance.js';

/**
 * An upper bound of how many points, each at least so far from every other, have room in a rectangle.
 *
 * Formula: n ≤ 2/√3 · a·b/p² + (a + b)/p + 1, rounded down; on a line (b = 0) a/p + 1, which is exact.
 * @param lengthMm a, 0 or more
 * @param heightMm b, 0 or more
 * @param leastMm p, the least distance of two points; less by the tolerance still counts as kept
 * @returns a number of points no packing exceeds; Infinity where the least distance is not above the tolerance
 * Valid for rectangles, lines and a single place. A side below 0 has no room for any point: 0. Throws nothing.
 * @example mostPoints(300, 0, 75) // 5
 * Source: N. Oler, An inequality in the geometry of numbers, Acta Mathematica 105 (1961), from memory.
 */
export function mostPoints(lengthMm: number, heightMm: number, leastMm: number): number {
  if (lengthMm < -toleranceMm || heightMm < -toleranceMm) return 0;
  const apartMm = leastMm - toleranceMm;
  if (apartMm <= 0) return Infinity;
  const [a, b] = [Math.max(lengthMm, 0) / apartMm, Math.max(heightMm, 0) / apartMm];
  return Math.floor((2 / Math.sqrt(3)) * a * b + a + b + 1);
}
