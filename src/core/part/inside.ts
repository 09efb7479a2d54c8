import type { Outline } from './outline.js';
import type { Shape } from './shape.js';
import { clearOf, voidsOf } from './void.js';

/**
 * How far a shape reaches out of a face: the greatest of its overhangs beyond the lines of ends, edges and clips and of
 * its depths in notches.
 *
 * Formula: o = max over the voids of −(signed distance from the void), at least 0.
 * @param outline the outline, as `outlineOf` gives it
 * @param shape in mm
 * @returns 0 for a shape that lies wholly on the face, else the overhang in mm
 * Valid for outlines of `outlineOf`. Throws nothing.
 * @example overhangMm(outline, { core: [{ x: 10, y: 2 }], radius: 8 }) // 6, beyond the bottom edge
 * Source: plane geometry.
 */
export function overhangMm(outline: Outline, shape: Shape): number {
  let overhang = 0;
  for (const each of voidsOf(outline)) overhang = Math.max(overhang, -clearOf(each, shape).distance);
  return overhang;
}
