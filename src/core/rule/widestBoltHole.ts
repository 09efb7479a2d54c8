import { atMost } from '../atMost.js';
import { mmPer } from '../quantity/units.js';
import { anchorRodRows } from './boltHoleTables.js';

/** Most that an oversize hole is over a bolt under 3/4 in: 13/16 in for 5/8 in. */
const oversizeIn = 3 / 16;

/**
 * The widest hole that a bolt is put in: over a bolt under 3/4 in what an oversize hole is, from there on what the hole of an
 * anchor rod is in a base plate. In a wider one, bolt or hole is most likely a slip.
 * @param diameterMm of the bolt, mm
 * @returns the width of the hole, mm
 * Source: AISC 360-22 Table J3.3 (from memory) and AISC Design Guide 1, second edition (2006), Table 2.3; for metric bolts
 * the same clearances, common practice, no source.
 * @example widestBoltHoleMm(19.05) // 33.3375, which is 1-5/16 in
 */
export function widestBoltHoleMm(diameterMm: number): number {
  const inches = diameterMm / mmPer.in;
  const row = anchorRodRows.filter(({ diameter }) => atMost(diameter, inches)).at(-1);
  return diameterMm + (row ? row.hole - row.diameter : oversizeIn) * mmPer.in;
}
