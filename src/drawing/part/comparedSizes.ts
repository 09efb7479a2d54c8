import type { Finding } from '../../core/check/finding.js';
import { formatLength } from '../../core/quantity/formatLength.js';
import { sizeAsTyped } from '../../core/quantity/sizeAsTyped.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { DrawnGroup } from './drawnGroup.js';

/** Both sizes of a comparison in one unit: that in which the first is typed. */
export function comparedSizes(
  { group }: Finding,
  givenMm: number,
  { groups, unit }: { groups: readonly DrawnGroup[]; unit: LengthUnit },
): (mm: number) => string {
  const own = groups.find(({ holes }) => holes[0]?.group === group);
  const first = sizeAsTyped(Math.abs(givenMm), Object.values(own?.group.typed ?? {}), unit);
  const other = /[a-z]$/.test(first) ? (unit === 'in' ? 'mm' : 'in') : undefined;
  return (mm) => (other ? `${formatLength(mm, other)} ${other}` : formatLength(mm, unit));
}
