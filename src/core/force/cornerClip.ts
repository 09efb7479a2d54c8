import { requirePositive } from '../requireRange.js';
import { forceValue, lengthValue, stressValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';

/**
 * The force to clip a corner off a plate or leg along a straight line.
 *
 * Formula: l = √(a² + b²); F = l · t · τ
 * @param input lengths a and b taken off the two edges and thickness t in mm; shear strength τ in MPa
 * @param working collects the steps when given
 * @returns force in N
 * Valid for sizes and strengths above zero; throws `invalid` otherwise.
 * @example cornerClipForceN({ alongMm: 30, acrossMm: 40, thicknessMm: 10, shearStrengthMPa: 345 }) // 172 500
 * Source: the cut: plane geometry; force along the whole cut at once: common practice, no source.
 */
export function cornerClipForceN(
  input: { alongMm: number; acrossMm: number; thicknessMm: number; shearStrengthMPa: number },
  working?: Working,
): number {
  const { alongMm, acrossMm, thicknessMm, shearStrengthMPa } = input;
  requirePositive('Thickness', thicknessMm);
  requirePositive('Shear strength', shearStrengthMPa);
  const cutLengthMm = cornerClipLengthMm(alongMm, acrossMm, working);
  const forceN = cutLengthMm * thicknessMm * shearStrengthMPa;
  working?.step({
    title: 'Force of the corner clip',
    formula: 'F = l · t · τ',
    values: [
      lengthValue('l', 'length of the cut', cutLengthMm),
      lengthValue('t', 'thickness', thicknessMm),
      stressValue('τ', 'shear strength', shearStrengthMPa),
    ],
    result: forceValue('F', 'force of the corner clip', forceN),
    source: 'common practice',
  });
  return forceN;
}

function cornerClipLengthMm(alongMm: number, acrossMm: number, working?: Working): number {
  requirePositive('Corner clip', alongMm);
  requirePositive('Corner clip', acrossMm);
  const cutLengthMm = Math.hypot(alongMm, acrossMm);
  working?.step({
    title: 'Cut of the corner clip',
    formula: 'l = √(a² + b²)',
    values: [
      lengthValue('a', 'taken off one edge', alongMm),
      lengthValue('b', 'taken off the other', acrossMm),
    ],
    result: lengthValue('l', 'length of the cut', cutLengthMm),
    source: 'plane geometry',
  });
  return cutLengthMm;
}
