import { requirePositive, requireWithin } from '../requireRange.js';
import type { Working } from '../working/working.js';

/** The steepest rake believed: 30°. */
export const steepestRakeRad = Math.PI / 6;

/**
 * The force to shear a flat bar or plate with one raked blade. The blade cuts over its engaged length
 * e = t / tan φ only; a bar narrower than that is never cut over a full triangle.
 *
 * Formula: w ≥ e: F = τ · t² / (2 · tan φ); w < e: F = τ · w · (t − w · tan φ / 2); φ = 0: F = τ · w · t
 * @param input width w and thickness t in mm, shear strength τ in MPa, rake φ in rad
 * @param working collects the step when given
 * @returns force in N, without an allowance for dull blades
 * Valid for rakes from 0 to 30°. Throws `invalid` outside that and for sizes not above zero.
 * @example flatBarShearForceN({ widthMm: 100, thicknessMm: 10, shearStrengthMPa: 345, rakeRad: 0 }) // 345 000
 * Source: Kalpakjian & Schmid, Manufacturing Engineering and Technology, shearing (from memory); the same as
 *   integrating τ · (t − x · tan φ) over the engaged length.
 */
export function flatBarShearForceN(
  input: { widthMm: number; thicknessMm: number; shearStrengthMPa: number; rakeRad: number },
  working?: Working,
): number {
  const { widthMm, thicknessMm, shearStrengthMPa, rakeRad } = input;
  requirePositive('Width', widthMm);
  requirePositive('Thickness', thicknessMm);
  requirePositive('Shear strength', shearStrengthMPa);
  requireWithin('Rake', rakeRad, 0, steepestRakeRad);
  const slope = Math.tan(rakeRad);
  const full = widthMm * slope >= thicknessMm;
  const cutAreaMm2 = full ? thicknessMm ** 2 / (2 * slope) : widthMm * (thicknessMm - (widthMm * slope) / 2);
  const forceN = shearStrengthMPa * cutAreaMm2;
  working?.step({
    title: 'Flat-bar shearing force',
    formula: full
      ? 'F = τ · t² / (2 · tan φ)'
      : rakeRad > 0
        ? 'F = τ · w · (t − w · tan φ / 2)'
        : 'F = τ · w · t',
    values: [
      { symbol: 'τ', meaning: 'shear strength', kind: 'stress', value: shearStrengthMPa },
      { symbol: 'w', meaning: 'width', kind: 'length', value: widthMm },
      { symbol: 't', meaning: 'thickness', kind: 'length', value: thicknessMm },
      { symbol: 'φ', meaning: 'rake of the blade', kind: 'angle', value: rakeRad },
    ],
    result: { symbol: 'F', meaning: 'shearing force', kind: 'force', value: forceN },
    source: 'Kalpakjian & Schmid, Manufacturing Engineering and Technology, shearing (from memory)',
  });
  return forceN;
}
