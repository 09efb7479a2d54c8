import type { CellValue } from '../../core/quantity/cellValue.js';
import { formatLength, formatNumber } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { NamedValue, Step } from '../../core/working/working.js';
import { inShopUnit, shopUnits } from '../shopUnit.js';

export const stepHeadings = ['Step', 'Formula', 'Values', 'Result', 'Unit', 'Source', 'Caution'];

/** A step as a row of cells: values as text rounded as the trade writes, the result exact. */
export function stepRow(step: Step, unit: LengthUnit): CellValue[] {
  const { kind, value } = step.result;
  const exact = typeof value === 'number' && kind !== 'text' ? inShopUnit(value, kind, unit) : value;
  return [
    step.title,
    step.formula,
    step.values.map((each) => valueText(each, unit)).join('; '),
    exact,
    kind === 'text' ? '' : shopUnits[kind][unit].name,
    step.source,
    (step.cautions ?? []).join(' '),
  ];
}

/** `t = 3/8 in`, `τ = 60 ksi`. */
function valueText({ symbol, kind, value }: NamedValue, unit: LengthUnit): string {
  if (kind === 'text' || typeof value === 'string') return `${symbol} = ${value}`;
  const { name, decimals } = shopUnits[kind][unit];
  const number =
    kind === 'length' ? formatLength(value, unit) : formatNumber(inShopUnit(value, kind, unit), decimals);
  return `${symbol} = ${number}${name === '' || name === '°' ? name : ` ${name}`}`;
}
