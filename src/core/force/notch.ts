import { requirePositive } from '../requireRange.js';
import { forceValue, lengthValue, stressValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { type Notch, notchCutLengthMm } from './notchCutLength.js';

const sharpCorner =
  'Square inside corners are sharp: drill the corner first; AISC 360 J1.6 asks about 1/2 in radius at copes (from memory).';

/**
 * The force to cut a notch in one bite.
 *
 * Formula: F = l · t · τ with the length l of the cut
 * @param input the notch in mm; thickness t in mm; shear strength τ in MPa
 * @param working collects the steps when given
 * @returns force in N
 * Valid for sizes and strengths above zero; throws `invalid` otherwise.
 * @example notchForceN({ widthMm: 50, depthMm: 25, where: 'edge', thicknessMm: 10, shearStrengthMPa: 345 }) // 345 000
 * Source: common practice, no source: punching along the cut; the cut by plane geometry.
 */
export function notchForceN(
  input: Notch & { thicknessMm: number; shearStrengthMPa: number },
  working?: Working,
): number {
  const { thicknessMm, shearStrengthMPa, where } = input;
  requirePositive('Thickness', thicknessMm);
  requirePositive('Shear strength', shearStrengthMPa);
  const cutLengthMm = notchCutLengthMm(input, working);
  const forceN = cutLengthMm * thicknessMm * shearStrengthMPa;
  working?.step({
    title: 'Notching force',
    formula: 'F = l · t · τ',
    values: [
      lengthValue('l', 'length of the cut', cutLengthMm),
      lengthValue('t', 'thickness', thicknessMm),
      stressValue('τ', 'shear strength', shearStrengthMPa),
    ],
    result: forceValue('F', 'notching force', forceN),
    source: 'common practice',
    ...(where === 'vee' ? {} : { cautions: [sharpCorner] }),
  });
  return forceN;
}
