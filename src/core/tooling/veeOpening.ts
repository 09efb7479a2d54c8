import { requirePositive, requireWithin } from '../requireRange.js';
import { lengthValue, ratioValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';

/**
 * The V opening an air bend is made in where none is named.
 *
 * Formula: V = k · t
 * @param input thickness t in mm; ratio k
 * @param working collects the step when given
 * @returns opening in mm
 * Valid for ratios from 4 to 20. Throws `invalid` outside that and for a thickness not above zero.
 * @example veeOpeningMm({ thicknessMm: 6, veeRatio: 10 }) // 60
 * Source: common practice, no source: 8 to 12 times the thickness.
 */
export function veeOpeningMm(input: { thicknessMm: number; veeRatio: number }, working?: Working): number {
  const { thicknessMm, veeRatio } = input;
  requirePositive('Thickness', thicknessMm);
  requireWithin('V opening ratio', veeRatio, 4, 20);
  const veeMm = veeRatio * thicknessMm;
  working?.step({
    title: 'V opening',
    formula: 'V = k · t',
    values: [ratioValue('k', 'V opening ratio', veeRatio), lengthValue('t', 'thickness', thicknessMm)],
    result: lengthValue('V', 'V opening', veeMm),
    source: 'common practice, 8 to 12 times the thickness',
  });
  return veeMm;
}
