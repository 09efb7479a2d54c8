import { type GradeItem, gradeValue as valueOf } from '../../core/material/gradeValue.js';
import { setting } from '../../core/shop/setting.js';
import type { Choice } from '../argument/argument.js';
import { choiceArgument } from '../argument/choice.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import { gradeArgument } from '../argument/trade.js';
import { define } from '../descriptor/descriptor.js';
import { inShopUnit } from '../../core/quantity/shopUnit.js';

const items: readonly (Choice & { value: GradeItem })[] = [
  { value: 'shear', meaning: 'shear strength that forces are taken from, 3 mm and thicker' },
  { value: 'tensile min', meaning: 'lower bound of the tensile strength' },
  { value: 'tensile upper', meaning: 'upper bound of the tensile strength' },
  { value: 'density', meaning: 'mass per volume' },
  { value: 'source', meaning: 'where the values come from' },
];

export const gradeValue = define({
  name: 'GRADEVALUE',
  purpose: 'One value of a grade: a strength, its density, or its source',
  arguments: {
    grade: gradeArgument(),
    item: choiceArgument('Which value', items),
    shop: shopOrUnitArgument,
  },
  result: 'ratio',
  gives: 'Strength in ksi or MPa, density in lb/ft³ or kg/m³, or the source as text.',
  errors: '#N/A for a grade that is not known, and for a value no source states.',
  source: "the grade's product standard, named by the item source",
  example: '=TONROW.GRADEVALUE("A36","tensile upper")',
  compute({ grade, item, shop }, { unit }, working) {
    const { kind, value } = valueOf({ grade, item, shearRatio: setting(shop, 'shearRatio') }, working);
    return typeof value === 'string' || kind === 'text' ? value : inShopUnit(value, kind, unit);
  },
});
