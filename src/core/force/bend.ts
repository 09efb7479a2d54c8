import { refuse } from '../inputError.js';
import { requirePositive } from '../requireRange.js';
import { forceValue, lengthValue, ratioValue, stressValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';

/** Bending constant of a V die: Groover. */
const veeConstant = 1.33;

/**
 * The greatest force of an air bend in a V die.
 *
 * Formula: F = K · Rm · L · t² / V with K = 1.33
 * @param input tensile strength Rm in MPa; length L of the bend, thickness t and V opening, all in mm
 * @param working collects the step when given
 * @returns force in N
 * Valid for openings above the thickness. Throws `invalid` for others and for values not above zero.
 * @example bendForceN({ tensileMPa: 450, lengthMm: 44.5, thicknessMm: 3.2, veeMm: 25 }) // 10 909
 * Source: Groover, Fundamentals of Modern Manufacturing, bending force, V bending K = 1.33 (from memory).
 */
export function bendForceN(
  input: { tensileMPa: number; lengthMm: number; thicknessMm: number; veeMm: number },
  working?: Working,
): number {
  const { tensileMPa, lengthMm, thicknessMm, veeMm } = input;
  requirePositive('Tensile strength', tensileMPa);
  requirePositive('Length', lengthMm);
  requirePositive('Thickness', thicknessMm);
  requirePositive('V opening', veeMm);
  if (veeMm <= thicknessMm) {
    const problem = 'the opening is not wider than the material is thick.';
    refuse('V opening', String(veeMm), problem, 'Use 8 to 12 times the thickness.');
  }
  const forceN = (veeConstant * tensileMPa * lengthMm * thicknessMm ** 2) / veeMm;
  working?.step({
    title: 'Bending force',
    formula: 'F = K · Rm · L · t² / V',
    values: [
      ratioValue('K', 'constant of a V die', veeConstant),
      stressValue('Rm', 'upper tensile strength', tensileMPa),
      lengthValue('L', 'length of the bend', lengthMm),
      lengthValue('t', 'thickness', thicknessMm),
      lengthValue('V', 'V opening', veeMm),
    ],
    result: forceValue('F', 'bending force', forceN),
    source: 'Groover, Fundamentals of Modern Manufacturing, bending force (from memory)',
  });
  return forceN;
}
