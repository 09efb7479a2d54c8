import { requirePositive, requireWithin } from '../requireRange.js';
import type { Working } from '../working/working.js';
import { steepestRakeRad } from './flatBarShear.js';

/**
 * The thickness of flat bar a given blade force cuts at a given width: the flat-bar shearing force solved for t.
 *
 * Formula: t = √(2 · F · tan φ / τ) where the bar is at least t / tan φ wide, else t = F / (τ · w) + w · tan φ / 2
 * @param input blade force F in N, width w in mm, shear strength τ in MPa, rake φ in rad
 * @param working collects the step when given
 * @returns thickness in mm
 * Valid for rakes from 0 to 30°. Throws `invalid` outside that and for values not above zero.
 * @example flatThicknessAtForceMm({ forceN: 345_000, widthMm: 100, shearStrengthMPa: 345, rakeRad: 0 }) // 10
 * Source: the force equation of {@link flatBarShearForceN}, solved.
 */
export function flatThicknessAtForceMm(
  input: { forceN: number; widthMm: number; shearStrengthMPa: number; rakeRad: number },
  working?: Working,
): number {
  const { forceN, widthMm, shearStrengthMPa, rakeRad } = input;
  requirePositive('Force', forceN);
  requirePositive('Width', widthMm);
  requirePositive('Shear strength', shearStrengthMPa);
  requireWithin('Rake', rakeRad, 0, steepestRakeRad);
  const slope = Math.tan(rakeRad);
  const cutAreaMm2 = forceN / shearStrengthMPa;
  const triangleMm = Math.sqrt(2 * cutAreaMm2 * slope);
  const full = slope > 0 && triangleMm <= widthMm * slope;
  const thicknessMm = full ? triangleMm : cutAreaMm2 / widthMm + (widthMm * slope) / 2;
  working?.step({
    title: 'Thickness the blade force cuts',
    formula: full ? 't = √(2 · F · tan φ / τ)' : 't = F / (τ · w) + w · tan φ / 2',
    values: [
      { symbol: 'F', meaning: 'blade force', kind: 'force', value: forceN },
      { symbol: 'τ', meaning: 'shear strength', kind: 'stress', value: shearStrengthMPa },
      { symbol: 'w', meaning: 'width', kind: 'length', value: widthMm },
      { symbol: 'φ', meaning: 'rake of the blade', kind: 'angle', value: rakeRad },
    ],
    result: { symbol: 't', meaning: 'thickness', kind: 'length', value: thicknessMm },
    source: 'the flat-bar shearing force, solved for the thickness',
  });
  return thicknessMm;
}
