import { requirePositive } from '../requireRange.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { requireMiter } from './requireMiter.js';

/**
 * What a kerf or slug takes along the bar, where the cut is mitered.
 *
 * Formula: a = k / cos θ
 * @param input kerf k in mm, across the cut; miter θ from square in rad, of either lean
 * @param working collects the step when given
 * @returns length in mm
 * Valid for miters up to 60°. Throws `invalid` beyond, and for a kerf that is not above zero.
 * @example miterKerfMm({ kerfMm: 3, miterRad: Math.PI / 4 }) // 4.24
 * Source: plane geometry.
 */
export function miterKerfMm(input: { kerfMm: number; miterRad: number }, working?: Working): number {
  const { kerfMm, miterRad } = input;
  requirePositive('Kerf', kerfMm);
  requireMiter('Miter', miterRad);
  const alongMm = kerfMm / Math.cos(miterRad);
  working?.step({
    title: 'Kerf along the bar',
    formula: 'a = k / cos θ',
    values: [
      lengthValue('k', 'kerf or slug, across the cut', kerfMm),
      { symbol: 'θ', meaning: 'miter from square', kind: 'angle', value: miterRad },
    ],
    result: lengthValue('a', 'what the cut takes along the bar', alongMm),
    source: 'plane geometry',
  });
  return alongMm;
}
