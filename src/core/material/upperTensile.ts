import { refuse } from '../inputError.js';
import { requirePositive } from '../requireRange.js';
import { stressValue, textValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import type { Grade } from './grade.js';

/** Under this thickness EN 10025-2 gives other tensile strengths. */
const thinUnderMm = 3;

/**
 * The upper bound of a grade's tensile strength: bars come in stronger than the minimum, so bending forces are
 * taken from this one.
 *
 * Formula: Rm as stated for the grade
 * @param input the grade; the thickness in mm, which selects the bound under 3 mm
 * @param working collects the step when given
 * @returns tensile strength in MPa
 * Valid for grades that state one. Throws `invalid` for others: the lower bound would give forces that are too small.
 * @example upperTensileMPa({ grade: findGrade('S355', 'Grade'), thicknessMm: 10 }) // 630
 * Source: the grade's product standard.
 */
export function upperTensileMPa(input: { grade: Grade; thicknessMm: number }, working?: Working): number {
  const { grade, thicknessMm } = input;
  requirePositive('Thickness', thicknessMm);
  const thin = thicknessMm < thinUnderMm && grade.thinTensileUpperMPa !== undefined;
  const tensileMPa = thin ? grade.thinTensileUpperMPa : grade.tensileUpperMPa;
  if (tensileMPa === undefined) {
    const fix =
      'Give the highest tensile strength itself, such as "tensile 65 ksi", or add it to the Grades table.';
    return refuse('Grade', grade.name, `${grade.name} has no upper tensile strength.`, fix);
  }
  requirePositive('Tensile upper', tensileMPa);
  working?.step({
    title: 'Tensile strength',
    formula: 'Rm as stated for the grade',
    values: [textValue('grade', 'grade', grade.name)],
    result: stressValue('Rm', `upper tensile strength${thin ? ' under 3 mm' : ''}`, tensileMPa),
    source: grade.source,
  });
  return tensileMPa;
}
