import { refuseUnknown } from '../inputError.js';
import { stressValue, textValue } from '../working/namedValue.js';
import type { NamedValue, Working } from '../working/working.js';
import type { Grade } from './grade.js';
import { shearStrengthMPa } from './shearStrength.js';

/** What can be asked of a grade. The names are part of saved formulas and never change. */
export const gradeItems = ['shear', 'tensile min', 'tensile upper', 'density', 'source'] as const;
export type GradeItem = (typeof gradeItems)[number];

/** From this thickness the usual bounds of a product standard hold. */
const usualThicknessMm = 3;

/**
 * One value of a grade: the shear strength calculations use, a bound of its tensile strength, its density, or where
 * they come from.
 *
 * Formula: shear strength by {@link shearStrengthMPa}; the others as stated
 * @param input the grade; what is asked for; shear strength as a share of the tensile
 * @param working collects the steps when given
 * @returns a quantity: stress in MPa, density in kg/m³, or text
 * Valid for what the grade states, for 3 mm and thicker. Throws `unknown` for a value no source states.
 * @example gradeValue({ grade: findGrade('S355', 'Grade'), item: 'tensile upper', shearRatio: 0.75 }).value // 630
 * Source: the grade's product standard.
 */
export function gradeValue(
  input: { grade: Grade; item: GradeItem; shearRatio: number },
  working?: Working,
): NamedValue {
  const { grade, item, shearRatio } = input;
  if (item === 'shear') {
    const shearMPa = shearStrengthMPa({ grade, thicknessMm: usualThicknessMm, shearRatio }, working);
    return stressValue('τ', 'shear strength', shearMPa);
  }
  const result = statedValue(grade, item);
  working?.step({
    title: `${grade.name}, ${item}`,
    formula: 'as stated for the grade',
    values: [textValue('grade', 'grade', grade.name)],
    result,
    source: grade.source,
  });
  return result;
}

function statedValue(grade: Grade, item: Exclude<GradeItem, 'shear'>): NamedValue {
  switch (item) {
    case 'tensile min':
      return stressValue('Rm', 'least tensile strength', stated(grade, item, grade.tensileMinMPa));
    case 'tensile upper':
      return stressValue('Rm', 'upper tensile strength', stated(grade, item, grade.tensileUpperMPa));
    case 'density':
      return { symbol: 'ρ', meaning: 'density', kind: 'density', value: grade.densityKgPerM3 };
    case 'source':
      return textValue('', 'where the values come from', grade.source);
  }
}

function stated(grade: Grade, item: GradeItem, value: number | undefined): number {
  if (value !== undefined) return value;
  const fix = "Add it to the shop's own grades, from the mill certificate or the product standard.";
  return refuseUnknown('Item', item, `no ${item} is stated for ${grade.name}.`, fix);
}
