import { requirePositive } from '../requireRange.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';

/**
 * The least distance from the edge of a hole to the tangent of a bend: nearer, the hole is pulled out of shape.
 *
 * Formula: c = 2 · t + R
 * @param input thickness t and inside radius R of the bend in mm
 * @param working collects the step when given
 * @returns distance in mm, edge of the hole to the bend
 * Valid for sizes above zero; throws `invalid` otherwise.
 * @example leastHoleToBendMm({ thicknessMm: 6, insideRadiusMm: 9 }) // 21
 * Source: common practice, no source.
 */
export function leastHoleToBendMm(
  input: { thicknessMm: number; insideRadiusMm: number },
  working?: Working,
): number {
  const { thicknessMm, insideRadiusMm } = input;
  requirePositive('Thickness', thicknessMm);
  requirePositive('Inside radius', insideRadiusMm);
  const leastMm = 2 * thicknessMm + insideRadiusMm;
  working?.step({
    title: 'Hole to bend',
    formula: 'c = 2 · t + R',
    values: [
      lengthValue('t', 'thickness', thicknessMm),
      lengthValue('R', 'inside radius of the bend', insideRadiusMm),
    ],
    result: lengthValue('c', 'least distance, edge of the hole to the bend', leastMm),
    source: 'common practice',
  });
  return leastMm;
}
