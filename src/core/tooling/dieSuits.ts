import { requirePositive } from '../requireRange.js';
import { type Hole, sidesOf } from './hole.js';

/** Sizes are stamped on dies with rounding. */
const roundingMm = 0.05;
const leastShare = 1 / 2;
const greatestShare = 2;

/**
 * Whether a die suits a punch: it has the punch's shape, and in both directions its opening leaves between half and
 * twice the total clearance.
 *
 * Formula: c / 2 ≤ D − d ≤ 2 · c, for the width and for the length
 * @param input opening of the die, size of the punch, total clearance c in mm
 * @returns whether it suits
 * Valid for sizes above zero; throws `invalid` otherwise. A rectangle is the same whichever side is named first.
 * @example dieSuits({ die: { shape: 'round', diameterMm: 22.8 }, punch: { shape: 'round', diameterMm: 22 }, clearanceMm: 0.8 }) // true
 * Source: common practice, no source.
 */
export function dieSuits(input: { die: Hole; punch: Hole; clearanceMm: number }): boolean {
  const { die, punch, clearanceMm } = input;
  requirePositive('Total clearance', clearanceMm);
  const opening = sidesOf(die);
  const size = sidesOf(punch);
  requirePositive('Die', opening.widthMm);
  requirePositive('Punch', size.widthMm);
  const leaves = (gapMm: number) =>
    gapMm >= leastShare * clearanceMm - roundingMm && gapMm <= greatestShare * clearanceMm + roundingMm;
  return (
    die.shape === punch.shape &&
    leaves(opening.widthMm - size.widthMm) &&
    leaves(opening.lengthMm - size.lengthMm)
  );
}
