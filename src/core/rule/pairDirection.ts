/** How two holes lie to each other: one after the other along the length, side by side, or staggered. */
export type PairDirection = 'along' | 'across' | 'oblique';

/** Lines of holes nearer to each other than this are one line; drawings are not dimensioned finer. */
const sameLineMm = 0.5;

/**
 * The direction of a pair of holes. The direction of force is not known to a parts list, so the length of the part
 * stands for it: a pair along it is spaced by p1 of EN 1993-1-8, a pair across it by p2.
 *
 * Formula: along where y ≤ 0.5 mm, across where x ≤ 0.5 mm, else oblique
 * @param input distance of the two centers along the length and across it, in mm, with or without sign
 * @returns the direction; holes on one place are along
 * Valid for every distance. Throws nothing.
 * @example pairDirection({ alongMm: 75, acrossMm: 0 }) // 'along'
 * Source: common practice, no source.
 */
export function pairDirection(input: { alongMm: number; acrossMm: number }): PairDirection {
  if (Math.abs(input.acrossMm) <= sameLineMm) return 'along';
  return Math.abs(input.alongMm) <= sameLineMm ? 'across' : 'oblique';
}
