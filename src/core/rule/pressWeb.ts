import { requirePositive } from '../requireRange.js';
import type { Working } from '../working/working.js';

const holeShare = 0.5;

/**
 * The steel that must be left between a punched hole and an edge or a neighbor: with less the edge bulges and the
 * punch leans.
 *
 * Formula: c = max(t, d / 2)
 * @param input thickness t in mm; dimension d of the hole towards the edge or neighbor in mm
 * @param working collects the step when given
 * @returns steel left in mm, edge of hole to edge
 * Valid for sizes above zero and for punched holes: a drilled or burned one bulges no edge. Throws `invalid` otherwise.
 * @example leastWebMm({ thicknessMm: 10, holeDimensionMm: 22 }) // 11
 * Source: common practice, no source.
 */
export function leastWebMm(
  input: { thicknessMm: number; holeDimensionMm: number },
  working?: Working,
): number {
  const { thicknessMm, holeDimensionMm } = input;
  requirePositive('Thickness', thicknessMm);
  requirePositive('Hole', holeDimensionMm);
  const leastMm = Math.max(thicknessMm, holeShare * holeDimensionMm);
  working?.step({
    title: 'Steel left beside a hole',
    formula: 'c = max(t, d / 2)',
    values: [
      { symbol: 't', meaning: 'thickness', kind: 'length', value: thicknessMm },
      { symbol: 'd', meaning: 'dimension of the hole', kind: 'length', value: holeDimensionMm },
    ],
    result: { symbol: 'c', meaning: 'least steel left', kind: 'length', value: leastMm },
    source: 'common practice',
  });
  return leastMm;
}
