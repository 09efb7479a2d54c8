import type { NamedValue } from '../working/working.js';
import { formatLength, formatNumber } from './formatLength.js';
import { inShopUnit, shopUnits } from './shopUnit.js';
import type { LengthUnit } from './units.js';

/** A quantity with its unit, rounded as the trade writes it: `3/8 in`, `30.03 US tons`. */
export function formatQuantity(
  { kind, value }: Pick<NamedValue, 'kind' | 'value'>,
  unit: LengthUnit,
): string {
  if (kind === 'text' || typeof value === 'string') return String(value);
  const { name, decimals } = shopUnits[kind][unit];
  const number =
    kind === 'length' ? formatLength(value, unit) : formatNumber(inShopUnit(value, kind, unit), decimals);
  if (name === '' || name === '°') return `${number}${name}`;
  return `${number} ${name === 'US ton' && number !== '1' ? 'US tons' : name}`;
}
