import { refuse } from '../inputError.js';
import { toleranceMm } from '../part/tolerance.js';
import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';

/** A row of holes, the first and the last as far from the two ends. Arguments are named as users see them. */
export interface EvenRow {
  /** `Length`. */
  over: string;
  overMm: number;
  /** `From end`. */
  from: string;
  fromMm: number;
  count: number;
  /** Of sentences. */
  unit: LengthUnit;
}

/**
 * Where the holes of a row lie, evenly spaced between the first and the last. One hole lies in the middle, where both
 * ends must be as far away as the row says.
 */
export function evenPlacesMm(row: EvenRow): number[] {
  const { overMm, fromMm, count } = row;
  const betweenMm = overMm - 2 * fromMm;
  if (count === 1 ? Math.abs(betweenMm) > toleranceMm : betweenMm <= toleranceMm) refuseRow(row);
  if (count === 1) return [fromMm];
  const pitchMm = betweenMm / (count - 1);
  return Array.from({ length: count }, (_, at) => fromMm + at * pitchMm);
}

function refuseRow({ over, overMm, from, fromMm, count, unit }: EvenRow): never {
  const size = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
  const both = over === 'Width' ? 'both sides' : 'both ends';
  const half = `half of ${over} (${size(overMm / 2)})`;
  return count === 1
    ? refuse(
        from,
        String(fromMm),
        `one hole cannot be ${size(fromMm)} from ${both} of ${size(overMm)}.`,
        `Give ${half}, or more holes.`,
      )
    : refuse(
        from,
        String(fromMm),
        `${size(fromMm)} from ${both} of ${size(overMm)} leaves nothing between the first hole and the last.`,
        `Give less than ${half}.`,
      );
}
