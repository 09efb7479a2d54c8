import { markedInvisible, visibleText } from './visibleText.js';

/** What a spreadsheet cell can hold when it reaches a function. */
export type CellValue = string | number | boolean | null;

/** True for every form in which hosts send an empty cell: null, "" and text of which nothing can be seen. */
export function isBlank(value: CellValue | undefined): value is null | undefined | '' {
  return value === null || value === undefined || (typeof value === 'string' && showsNothing(value));
}

function showsNothing(text: string): boolean {
  const first = text.charCodeAt(0);
  const isPlain = first > 0x20 && first < 0x7f;
  return !isPlain && visibleText(text).trim() === '';
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

/** Text on one line, without control characters, so that a message stays one readable sentence. */
export function plainText(value: string): string {
  return visibleText(value.slice(0, 500))
    .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
    .trim();
}
