import type { CellValue } from '../../core/quantity/cellValue.js';
import { formatQuantity } from '../../core/quantity/formatQuantity.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Step } from '../../core/working/working.js';
import { inShopUnit, shopUnits } from '../../core/quantity/shopUnit.js';

export const stepHeadings = ['Step', 'Formula', 'Values', 'Result', 'Unit', 'Source', 'Caution'];

/** A step as a row of cells: values as text rounded as the trade writes, the result exact. */
export function stepRow(step: Step, unit: LengthUnit): CellValue[] {
  const { kind, value } = step.result;
  const exact = typeof value === 'number' && kind !== 'text' ? inShopUnit(value, kind, unit) : value;
  return [
    step.title,
    step.formula,
    step.values.map((each) => `${each.symbol} = ${formatQuantity(each, unit)}`).join('; '),
    exact,
    kind === 'text' ? '' : shopUnits[kind][unit].name,
    step.source,
    (step.cautions ?? []).join(' '),
  ];
}
