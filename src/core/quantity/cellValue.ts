import type { CellValue } from '../../sheet/cellValue.js';
import { markedInvisible, visibleText } from './visibleText.js';

export type { CellValue };

/** True for every form in which hosts send an empty cell: null, "" and text of which nothing can be seen. */
export function isBlank(value: CellValue | undefined): value is null | undefined | '' {
  return value === null || value === undefined || (typeof value === 'string' && showsNothing(value));
}

function showsNothing(text: string): boolean {
  const first = text.charCodeAt(0);
  const isPlain = first > 0x20 && first < 0x7f;
  return text === '' || (!isPlain && visibleText(text).trim() === '');
}

/**
 * The value as it is meant, with every form of a blank cell as null. A desktop host hands a blank cell on as the number
 * 0, a web host as null, so the two cannot be told apart: 0 is blank in every argument, column and table. Nothing needs
 * a 0 of its own: a miter or rake of nothing reads the same, a tool not on hand or a blade without rake is `none`.
 */
export function meant(value: CellValue | undefined): CellValue {
  return isBlank(value) || value === 0 ? null : value;
}

const longestQuote = 40;

/** The value as it is quoted back in a message: text in quotes and shortened, numbers as they are. */
export function quoted(value: CellValue | undefined): string {
  if (isBlank(value)) return 'a blank cell';
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (typeof value === 'number') return String(value);
  const text = markedInvisible(plainText(value));
  return `'${text.length > longestQuote ? `${text.slice(0, longestQuote)}…` : text}'`;
}

const longestPlain = 500;
const isPrintable = /^[\x20-\x7E]*$/;

/** Text on one line, without control characters, so that a message stays one readable sentence. */
export function plainText(value: string): string {
  const text = value.length > longestPlain ? value.slice(0, longestPlain) : value;
  if (isPrintable.test(text)) return text.trim();
  return visibleText(text)
    .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
    .trim();
}
