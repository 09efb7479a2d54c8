import type { EdgeCode } from '../../rule/edgeDistance.js';
import { leastWebMm } from '../../rule/pressWeb.js';
import type { LengthUnit } from '../../quantity/units.js';
import { leastDimensionMm } from '../../tooling/hole.js';
import type { PlacedGroup } from '../readyRow.js';
import { type BoltBasis, boltBasis } from './boltBasis.js';

/** A hole group in a face, with what its distances are held against. */
export interface HeldGroup extends PlacedGroup {
  bolt: BoltBasis;
  /** Steel that must be left beside a punched hole; none beside one that is drilled or burned. */
  webMm: number;
}

export function heldGroup(placed: PlacedGroup, unit: LengthUnit, code: EdgeCode): HeldGroup {
  const { group, process, thicknessMm } = placed;
  const holeDimensionMm = leastDimensionMm(group.hole);
  const webMm = process.made === 'drill' ? 0 : leastWebMm({ thicknessMm, holeDimensionMm });
  return { ...placed, bolt: boltBasis(group, unit, code), webMm };
}
