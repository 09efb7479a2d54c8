import { requirePositive } from '../requireRange.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';

/** The flange must rest on both shoulders of the V. */
const flangeShare = 0.77;

/**
 * The least flange an air bend in a V die can make: a shorter one slips into the V.
 *
 * Formula: b = 0.77 · V
 * @param input V opening in mm
 * @param working collects the step when given
 * @returns flange in mm, outside
 * Valid for openings above zero; throws `invalid` otherwise.
 * @example leastFlangeMm({ veeMm: 60 }) // 46.2
 * Source: common practice, no source.
 */
export function leastFlangeMm(input: { veeMm: number }, working?: Working): number {
  const { veeMm } = input;
  requirePositive('V opening', veeMm);
  const leastMm = flangeShare * veeMm;
  working?.step({
    title: 'Least flange',
    formula: 'b = 0.77 · V',
    values: [lengthValue('V', 'V opening', veeMm)],
    result: lengthValue('b', 'least flange, outside', leastMm),
    source: 'common practice',
  });
  return leastMm;
}
