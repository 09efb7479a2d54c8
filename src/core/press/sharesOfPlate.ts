import { requirePositive } from '../requireRange.js';

export interface SharesOfPlate {
  /** Of the force of the plate's own size in the plate's material. */
  ofPlate: number;
  /** Of that, what the part would take in the plate's material: its size alone. */
  bySize: number;
  /** What the part's material adds: its shear strength over the plate's. */
  byMaterial: number;
  /** Of the rated force; left out where the press states none. */
  ofRated?: number;
  /** The one that decides, and is the larger. */
  governs: 'plate' | 'rated force';
}

/**
 * The share of a station told every way, so that a row can say why it is what it is: 120 % of a plate's own size is no
 * error where the plate stands for mild steel and the part is stronger.
 *
 * Formula: F / Fp = bySize · τ / τp; F / R
 * @param input force F of the part and force Fp of the plate's size in its own material, in N; shear strengths τ and
 *   τp of both, in MPa; rated force R in N, Infinity where there is no limit, left out where it is not known
 * @returns shares, 1 is full, and which decides
 * Valid for values above zero; throws `invalid` otherwise.
 * @example sharesOfPlate({ forceN: 480, plateForceN: 400, shearStrengthMPa: 414, referenceMPa: 345 }).bySize // 1
 * Source: common practice, no source.
 */
export function sharesOfPlate(input: {
  forceN: number;
  plateForceN: number;
  shearStrengthMPa: number;
  referenceMPa: number;
  ratedForceN?: number;
}): SharesOfPlate {
  const { forceN, plateForceN, shearStrengthMPa, referenceMPa, ratedForceN } = input;
  requirePositive('Force', forceN);
  requirePositive('Force of the plate', plateForceN);
  requirePositive('Shear strength', shearStrengthMPa);
  requirePositive('Reference shear strength', referenceMPa);
  const ofPlate = forceN / plateForceN;
  const byMaterial = shearStrengthMPa / referenceMPa;
  const shares = { ofPlate, bySize: ofPlate / byMaterial, byMaterial };
  if (ratedForceN === undefined) return { ...shares, governs: 'plate' };
  if (ratedForceN !== Infinity) requirePositive('Rated force', ratedForceN);
  const ofRated = forceN / ratedForceN;
  return { ...shares, ofRated, governs: ofRated > ofPlate ? 'rated force' : 'plate' };
}
