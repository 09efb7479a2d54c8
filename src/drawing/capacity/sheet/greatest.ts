import type { PressFinding } from '../../../core/check/finding.js';
import { InputError } from '../../../core/inputError.js';

/** The largest of some sizes that a station takes: within the shop's share, and at all. */
export type Greatest =
  | { is: 'size'; shareMm?: number; ratingMm: number }
  /** Not even the smallest. */
  | { is: 'none' }
  /** A value of the press is blank, so nobody knows. */
  | { is: 'unknown' };

/**
 * Tries sizes on the checks that a row goes through: a size that fails nothing is within the rating, one that is not
 * Near limit either within the share.
 * @param sizesMm sizes, smallest first
 * @param findingsOf what the press says to a size
 */
export function greatestOf(
  sizesMm: readonly number[],
  findingsOf: (mm: number) => readonly PressFinding[],
): Greatest {
  let shareMm: number | undefined;
  let ratingMm: number | undefined;
  for (const mm of sizesMm) {
    const findings = tried(() => findingsOf(mm));
    if (findings === undefined || findings.some(({ outcome }) => outcome === 'failed')) continue;
    if (findings.some(({ outcome }) => outcome === 'open')) return { is: 'unknown' };
    ratingMm = mm;
    if (!findings.some(({ verdict }) => verdict === 'Near limit')) shareMm = mm;
  }
  if (ratingMm === undefined) return { is: 'none' };
  return { is: 'size', ratingMm, ...(shareMm === undefined ? {} : { shareMm }) };
}

/** A size that no section has is no size. */
function tried<Found>(find: () => Found): Found | undefined {
  try {
    return find();
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}
