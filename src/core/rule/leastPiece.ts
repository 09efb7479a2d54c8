import { requirePositive } from '../requireRange.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';

const thicknessFactor = 2;
const neverUnderMm = 25;

/**
 * The shortest piece a shear cuts off without turning it or spoiling its end, where the press states none.
 *
 * Formula: l = max(2 · t, 25 mm), t the thickness of a flat or an angle, the size of a round or square bar
 * @param input thickness or size t in mm
 * @param working collects the step when given
 * @returns length in mm
 * Valid for sizes above zero; throws `invalid` otherwise. The press's own shortest piece goes before it.
 * @example leastPieceMm({ thicknessMm: 19.05 }) // 38.1
 * Source: common practice, no source.
 */
export function leastPieceMm(input: { thicknessMm: number }, working?: Working): number {
  const { thicknessMm } = input;
  requirePositive('Thickness', thicknessMm);
  const leastMm = Math.max(thicknessFactor * thicknessMm, neverUnderMm);
  working?.step({
    title: 'Shortest piece',
    formula: 'l = max(2 · t, 25 mm)',
    values: [lengthValue('t', 'thickness, or size of the bar', thicknessMm)],
    result: lengthValue('l', 'shortest piece by practice', leastMm),
    source: 'common practice',
  });
  return leastMm;
}
