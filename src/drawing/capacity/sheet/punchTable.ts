import type { Grade } from '../../../core/material/grade.js';
import type { Press } from '../../../core/press/press.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { commonThicknessesMm, holeStepMm } from '../commonSizes.js';
import { punchCapacity } from '../punchCapacity.js';

/** The holes of a thickness and grade, in whole steps of a hole size. */
export type HoleRange =
  | { is: 'holes'; leastMm: number; shareMm?: number; ratingMm: number }
  | { is: 'none' }
  | { is: 'unknown' };

export interface PunchTable {
  grades: string[];
  rows: { thicknessMm: number; cells: HoleRange[] }[];
}

/** The round holes a press punches, by thickness and grade: the smallest rounded up, the largest rounded down. */
export function punchTable(press: Press, shop: Shop, grades: readonly Grade[]): PunchTable {
  const step = holeStepMm[shop.unit];
  const rows = commonThicknessesMm(shop.unit).map((thicknessMm) => ({
    thicknessMm,
    cells: grades.map((grade) => rangeOf(press, shop, grade, thicknessMm, step)),
  }));
  return { grades: grades.map(({ name }) => name), rows };
}

function rangeOf(press: Press, shop: Shop, grade: Grade, thicknessMm: number, step: number): HoleRange {
  const capacity = punchCapacity(press, grade, shop, thicknessMm);
  if ('problem' in capacity || capacity.unchecked !== undefined) return { is: 'unknown' };
  const least = roundUp(capacity.leastMm, step);
  const share = roundDown(capacity.shareMm, step);
  const rating = roundDown(capacity.ratingMm, step);
  if (capacity.stopped !== undefined || rating < least) return { is: 'none' };
  return { is: 'holes', leastMm: least, ratingMm: rating, ...(share < least ? {} : { shareMm: share }) };
}

/** A size that is a whole number of steps but for rounding stays. */
const slack = 1e-6;

const roundDown = (mm: number, step: number) => Math.floor(mm / step + slack) * step;
const roundUp = (mm: number, step: number) => Math.ceil(mm / step - slack) * step;
