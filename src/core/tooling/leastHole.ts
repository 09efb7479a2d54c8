import { requirePositive, requireWithin } from '../requireRange.js';
import type { Working } from '../working/working.js';

/**
 * The least dimension a punched hole may have (diameter, slot width, square side): under it the punch bursts.
 *
 * Formula: d = max(r · t, 4 · τ · t / σp)
 * @param input thickness t in mm, shear strength τ in MPa, hole-to-thickness ratio r, stress σp the punch may
 *   carry in compression in MPa
 * @param working collects the step when given
 * @returns least dimension in mm
 * Valid for ratios from 0.5 to 5. Throws `invalid` outside that and for values not above zero.
 * @example leastHoleMm({ thicknessMm: 10, shearStrengthMPa: 345, holeToThickness: 1, punchAllowanceMPa: 1650 }) // 10
 * Source: common practice; 4 · τ · t / σp equates the punching force of a round hole with the punch's own strength.
 */
export function leastHoleMm(
  input: {
    thicknessMm: number;
    shearStrengthMPa: number;
    holeToThickness: number;
    punchAllowanceMPa: number;
  },
  working?: Working,
): number {
  const { thicknessMm, shearStrengthMPa, holeToThickness, punchAllowanceMPa } = input;
  requirePositive('Thickness', thicknessMm);
  requirePositive('Shear strength', shearStrengthMPa);
  requirePositive('Punch allowance', punchAllowanceMPa);
  requireWithin('Hole-to-thickness ratio', holeToThickness, 0.5, 5);
  const leastMm = Math.max(
    holeToThickness * thicknessMm,
    (4 * shearStrengthMPa * thicknessMm) / punchAllowanceMPa,
  );
  working?.step({
    title: 'Smallest hole',
    formula: 'd = max(r · t, 4 · τ · t / σp)',
    values: [
      { symbol: 'r', meaning: 'hole-to-thickness ratio', kind: 'ratio', value: holeToThickness },
      { symbol: 't', meaning: 'thickness', kind: 'length', value: thicknessMm },
      { symbol: 'τ', meaning: 'shear strength', kind: 'stress', value: shearStrengthMPa },
      { symbol: 'σp', meaning: 'punch allowance in compression', kind: 'stress', value: punchAllowanceMPa },
    ],
    result: { symbol: 'd', meaning: 'smallest hole', kind: 'length', value: leastMm },
    source: 'common practice',
  });
  return leastMm;
}
