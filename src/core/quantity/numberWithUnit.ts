import type { CellValue } from './cellValue.js';

/** A cell taken apart: what to read as a number, and the unit behind it, empty where there is none. */
export interface NumberWithUnit {
  number: number | string;
  unit: string;
}

/** Takes `65 US ton` apart; undefined for a cell that does not begin with a number. */
export function numberWithUnit(value: CellValue): NumberWithUnit | undefined {
  if (typeof value === 'number') return { number: value, unit: '' };
  if (typeof value !== 'string') return undefined;
  const text = value.trim();
  const number = /^[\d.,]+/.exec(text)?.[0];
  return number === undefined ? undefined : { number, unit: text.slice(number.length).trim() };
}
