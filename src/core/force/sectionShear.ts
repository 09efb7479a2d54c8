import { requirePositive, requireWithin } from '../requireRange.js';
import type { Working } from '../working/working.js';

const steepestMiterRad = (75 * Math.PI) / 180;

/**
 * The force to shear an angle, channel, round or square bar in one cut: the whole section at once.
 *
 * Formula: F = A / cos θ · τ
 * @param input section area A in mm², shear strength τ in MPa, miter θ from square in rad (either hand)
 * @param working collects the step when given
 * @returns force in N
 * Valid for miters from −75° to 75°. Throws `invalid` outside that and for values not above zero.
 * @example sectionShearForceN({ areaMm2: 929, shearStrengthMPa: 345, miterRad: 0 }) // 320 505
 * Source: common practice; an oblique plane cuts area / cos θ (plane geometry).
 */
export function sectionShearForceN(
  input: { areaMm2: number; shearStrengthMPa: number; miterRad: number },
  working?: Working,
): number {
  const { areaMm2, shearStrengthMPa, miterRad } = input;
  requirePositive('Area', areaMm2);
  requirePositive('Shear strength', shearStrengthMPa);
  requireWithin('Miter', miterRad, -steepestMiterRad, steepestMiterRad);
  const forceN = (areaMm2 / Math.cos(miterRad)) * shearStrengthMPa;
  working?.step({
    title: 'Section shearing force',
    formula: miterRad === 0 ? 'F = A · τ' : 'F = A / cos θ · τ',
    values: [
      { symbol: 'A', meaning: 'section area', kind: 'area', value: areaMm2 },
      { symbol: 'τ', meaning: 'shear strength', kind: 'stress', value: shearStrengthMPa },
      ...(miterRad === 0
        ? []
        : [{ symbol: 'θ', meaning: 'miter from square', kind: 'angle', value: miterRad } as const]),
    ],
    result: { symbol: 'F', meaning: 'shearing force', kind: 'force', value: forceN },
    source: 'common practice; oblique area from plane geometry',
  });
  return forceN;
}
