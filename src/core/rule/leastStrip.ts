import { requirePositive } from '../requireRange.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';

const thicknessFactor = 8;

/**
 * The width under which a sheared strip twists and bows: a caution is due, no refusal.
 *
 * Formula: w = 8 · t
 * @param input thickness t in mm
 * @param working collects the step when given
 * @returns width in mm
 * Valid for thicknesses above zero; throws `invalid` otherwise. For strips sheared lengthwise from plate, not for bars,
 * which come in their width.
 * @example leastStripWidthMm({ thicknessMm: 10 }) // 80
 * Source: common practice, no source.
 */
export function leastStripWidthMm(input: { thicknessMm: number }, working?: Working): number {
  const { thicknessMm } = input;
  requirePositive('Thickness', thicknessMm);
  const leastMm = thicknessFactor * thicknessMm;
  working?.step({
    title: 'Narrow strip',
    formula: 'w = 8 · t',
    values: [lengthValue('t', 'thickness', thicknessMm)],
    result: lengthValue('w', 'least width that stays straight', leastMm),
    source: 'common practice',
  });
  return leastMm;
}
