import { memo } from '../../quantity/memo.js';
import type { LengthUnit } from '../../quantity/units.js';
import { boltOfHole } from '../../rule/boltOfHole.js';
import type { BoltSize } from '../../rule/boltSize.js';
import type { EdgeCode } from '../../rule/edgeDistance.js';
import { leastDimensionMm } from '../../tooling/hole.js';
import type { HoleGroup } from '../job/rowJob.js';

/** The bolt that the distances of a hole go by. `read`: the row gives none, and the hole is a standard one for it. */
export type BoltBasis = { is: 'given' | 'read'; bolt: BoltSize } | { is: 'none' } | { is: 'not known' };

const remembered = memo<BoltSize | undefined>();

/** The bolt of a basis that has one. */
export function boltOf(basis: BoltBasis): BoltSize | undefined {
  return basis.is === 'given' || basis.is === 'read' ? basis.bolt : undefined;
}

/** The bolt of a group: of the row, none where it says so, else the one whose standard hole it is, round or slot,
 * of the shop's own bolts first. */
export function boltBasis({ bolt, noBolt, hole }: HoleGroup, unit: LengthUnit, code: EdgeCode): BoltBasis {
  if (noBolt) return { is: 'none' };
  if (bolt) return { is: 'given', bolt };
  if (hole.shape !== 'round' && hole.shape !== 'slot') return { is: 'not known' };
  const diameterMm = leastDimensionMm(hole);
  const read = remembered(`${diameterMm} ${unit} ${code}`, () => {
    const size = { diameterMm, code: code === 'EN' ? ('EN' as const) : ('AISC' as const) };
    const other = unit === 'in' ? 'mm' : 'in';
    return boltOfHole({ ...size, unit }) ?? boltOfHole({ ...size, unit: other });
  });
  return read ? { is: 'read', bolt: read } : { is: 'not known' };
}
