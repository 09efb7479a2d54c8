import { refuse } from '../inputError.js';
import { requirePositive, requireWithin } from '../requireRange.js';
import type { Working } from '../working/working.js';
import type { Grade } from './grade.js';

/** Under this thickness EN 10025-2 gives other tensile strengths. */
const thinUnderMm = 3;

/**
 * The shear strength that forces are calculated with: the grade's own where one is stated, else a share of the
 * upper bound of its tensile strength.
 *
 * Formula: τ = r · Rm
 * @param input the grade; the thickness in mm (it selects the bound under 3 mm); the share r
 * @param working collects the step when given
 * @returns shear strength in MPa
 * Valid for a share from 0.3 to 1.2. Throws `invalid` outside it, and for a grade that has neither a shear
 * strength nor an upper tensile strength: the lower bound would give forces that are too small.
 * @example shearStrengthMPa({ grade: findGrade('S355', 'Grade'), thicknessMm: 10, shearRatio: 0.75 }) // 472.5
 * Source: common practice (0.75; 0.7 in Kalpakjian & Schmid, from memory); bounds: the grade's product standard.
 */
export function shearStrengthMPa(
  input: { grade: Grade; thicknessMm: number; shearRatio: number },
  working?: Working,
): number {
  const { grade, thicknessMm, shearRatio } = input;
  requirePositive('Thickness', thicknessMm);
  requireWithin('Shear ratio', shearRatio, 0.3, 1.2);
  if (grade.shearMPa !== undefined) return statedShear(grade, grade.shearMPa, working);
  const thin = thicknessMm < thinUnderMm && grade.thinTensileUpperMPa !== undefined;
  const tensileMPa = thin ? grade.thinTensileUpperMPa : grade.tensileUpperMPa;
  if (tensileMPa === undefined) {
    const problem = `${grade.name} has neither a shear strength nor an upper tensile strength.`;
    return refuse('Grade', grade.name, problem, 'Give one of the two for it.');
  }
  requirePositive('Tensile upper', tensileMPa);
  const shearMPa = shearRatio * tensileMPa;
  working?.step({
    title: 'Shear strength',
    formula: 'τ = r · Rm',
    values: [
      {
        symbol: 'r',
        meaning: 'shear strength as a share of the tensile strength',
        kind: 'ratio',
        value: shearRatio,
      },
      {
        symbol: 'Rm',
        meaning: `upper tensile strength of ${grade.name}${thin ? ' under 3 mm' : ''}`,
        kind: 'stress',
        value: tensileMPa,
      },
    ],
    result: { symbol: 'τ', meaning: 'shear strength', kind: 'stress', value: shearMPa },
    source: `${grade.source}; share: common practice`,
  });
  return shearMPa;
}

function statedShear(grade: Grade, shearMPa: number, working?: Working): number {
  requirePositive('Shear', shearMPa);
  working?.step({
    title: 'Shear strength',
    formula: 'τ as stated for the grade',
    values: [{ symbol: '', meaning: 'grade', kind: 'text', value: grade.name }],
    result: { symbol: 'τ', meaning: 'shear strength', kind: 'stress', value: shearMPa },
    source: grade.source,
  });
  return shearMPa;
}
