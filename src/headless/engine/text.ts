import { CannotCompute } from './values.js';

const plainNumber = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?$/i;
const grouped = /^[+-]?\d{1,3}(?:,\d{3})+(?:\.\d*)?$/;

/**
 * The number that text stands for in arithmetic; undefined when it stands for none. Text that a host
 * may read as a date, a fraction or money is not guessed at.
 */
export function numberOfText(text: string): number | undefined {
  let trimmed = text.trim();
  const percent = trimmed.endsWith('%');
  if (percent) trimmed = trimmed.slice(0, -1).trim();
  if (plainNumber.test(trimmed)) return percent ? Number(trimmed) / 100 : Number(trimmed);
  if (grouped.test(trimmed)) return Number(trimmed.replace(/,/g, '')) / (percent ? 100 : 1);
  if (/\d/.test(text))
    throw new CannotCompute(`The text "${text.slice(0, 30)}" might be read as a number or a date.`);
  return undefined;
}

/** A number as `&` and the text functions show it: up to 15 digits. */
export function textOfNumber(number: number): string {
  if (Number.isInteger(number) && Math.abs(number) < 1e15) return String(number === 0 ? 0 : number);
  const size = Math.abs(number);
  if (size < 1e-4 || size >= 1e15)
    throw new CannotCompute('A very large or small number is turned into text.');
  return String(Number(number.toPrecision(15)));
}
