import { hardestOf } from '../../../core/check/severity.js';
import type { Grade } from '../../../core/material/grade.js';
import { upperTensileMPa } from '../../../core/material/upperTensile.js';
import { bendFindings } from '../../../core/press/bendStation.js';
import { limitOf } from '../../../core/press/limit.js';
import { type Press, pressValue } from '../../../core/press/press.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { setting } from '../../../core/shop/setting.js';
import { commonThicknessesMm } from '../commonSizes.js';
import { greatestGoodShare } from '../punchCapacity.js';
import { greatestOf } from './greatest.js';

/** The thickest plate of a V opening and how long it bends within the shop's share. */
export type VeeCell =
  | { is: 'bend'; thicknessMm: number; lengthMm: number }
  | { is: 'none' }
  | { is: 'unknown' };

export interface VeeRow {
  veeMm: number;
  cells: VeeCell[];
}

/** Long enough that a force is no rounding, short enough for every press. */
const triedLengthMm = 25;

/** What each V opening on hand bends, by grade; none where the openings are not known. */
export function veeTable(press: Press, shop: Shop, grades: readonly Grade[]): VeeRow[] {
  const openings = pressValue(press, 'bendVeeOpenings');
  if (openings.state !== 'list') return [];
  return openings.values.map((veeMm) => ({
    veeMm,
    cells: grades.map((grade) => cellOf(press, shop, grade, veeMm)),
  }));
}

function cellOf(press: Press, shop: Shop, grade: Grade, veeMm: number): VeeCell {
  // Only this opening: the smallest on hand that a thickness may be bent in is another row's.
  const own: Press = {
    ...press,
    values: { ...press.values, bendVeeOpenings: { state: 'list', values: [veeMm] } },
  };
  const findingsOf = (thicknessMm: number) =>
    bendFindings(own, {
      lengthMm: triedLengthMm,
      thicknessMm,
      grade,
      tensileMPa: upperTensileMPa({ grade, thicknessMm }),
      veeRatio: setting(shop, 'veeRatio'),
    });
  const greatest = greatestOf(commonThicknessesMm(shop.unit), findingsOf);
  if (greatest.is !== 'size') return greatest;
  const thicknessMm = greatest.shareMm ?? greatest.ratingMm;
  const use = hardestOf(findingsOf(thicknessMm))?.use ?? 0;
  const longest = limitOf(press, 'bendLength');
  if (typeof longest !== 'number') return { is: 'unknown' };
  const byForceMm = use === 0 ? Infinity : (triedLengthMm / use) * greatestGoodShare(press);
  return { is: 'bend', thicknessMm, lengthMm: Math.min(longest, byForceMm) };
}
