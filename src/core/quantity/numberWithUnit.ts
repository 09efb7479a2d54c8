import { type CellValue, plainText } from './cellValue.js';

/** A cell taken apart: what to read as a number, and the unit behind it, empty where there is none. */
export interface NumberWithUnit {
  number: number | string;
  unit: string;
}

/** Spaces may part thousands: `1 500 kN`. */
const numberAtStart = /^(?:\d{1,3}(?: \d{3})+(?![\d.,])|[\d.,]+)/;

/** Takes `65 US ton` apart; undefined for a cell that does not begin with a number. */
export function numberWithUnit(value: CellValue): NumberWithUnit | undefined {
  if (typeof value === 'number') return { number: value, unit: '' };
  if (typeof value !== 'string') return undefined;
  const text = plainText(value).replace(/\s+/g, ' ');
  const number = numberAtStart.exec(text)?.[0];
  if (number === undefined) return undefined;
  return { number: number.replaceAll(' ', ''), unit: text.slice(number.length).trim() };
}
