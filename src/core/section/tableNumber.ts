import { digitsValue } from '../quantity/readNumber.js';

/** `11.50`, `11,5` and `11.5#` as the names of tables write them. */
export function tableNumber(part: string): string {
  const number = part.replace(/ ?(?:#|lbs?\/ft|lbs?|plf)\.?$/, '');
  const value = digitsValue(number);
  return typeof value === 'number' ? String(value) : number;
}
