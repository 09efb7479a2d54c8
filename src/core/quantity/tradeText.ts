import { visibleText } from './visibleText.js';

const fractionCharacters: Record<string, string> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};
const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const lowered = '₀₁₂₃₄₅₆₇₈₉';
const plain = /^[\x20-\x7E]*$/;
const lineBreak = /[\t\n\v\f\r\u2028\u2029]/;

/**
 * Text as the trade types it, in one spelling: lower case, straight marks, `x` between dimensions, `-` for
 * every dash, fraction characters as ` 3/8`, single spaces, nothing invisible. A line break or tab between two digits is
 * `;`: two values stand there, and `3` over `3/4` is no 3-3/4. Each step is linear in the length of the text.
 */
export function tradeText(text: string): string {
  const typed = plain.test(text) ? text.replaceAll('`', "'") : inPlainCharacters(visibleText(text));
  const lines = lineBreak.test(typed) ? typed.replace(/\s+/g, betweenValues) : typed.replace(/\s+/g, ' ');
  return lines.replaceAll("''", '"').replaceAll('*', 'x').trim().toLowerCase();
}

function betweenValues(space: string, at: number, text: string): string {
  const parts = lineBreak.test(space) && isDigit(text[at - 1]) && isDigit(text[at + space.length]);
  return parts ? '; ' : ' ';
}

const isDigit = (character = '') => /^[\d.]$/.test(character);

function inPlainCharacters(text: string): string {
  return text
    .replace(/([-\u2010-\u2015\u2212]?)([½¼¾⅓⅔⅛⅜⅝⅞])/g, (_, dash: string, character: string) => {
      return `${dash === '' ? ' ' : '-'}${fractionCharacters[character]}`;
    })
    .replace(/([⁰¹²³⁴⁵⁶⁷⁸⁹]+)[/\u2044\u2215]([₀₁₂₃₄₅₆₇₈₉]+)/g, (_, over: string, under: string) => {
      return ` ${digits(over, raised)}/${digits(under, lowered)}`;
    })
    .replace(/[\u2018\u2019\u2032\u00B4`]/g, "'")
    .replace(/[\u201C\u201D\u2033]/g, '"')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[×✕⨯]/g, 'x')
    .replace(/[\u00D8\u2300\u2205\u03A6\u03C6\u03D5]/g, 'ø')
    .replaceAll('∠', 'l ')
    .replaceAll('□', 'sq ');
}

function digits(text: string, alphabet: string): string {
  return [...text].map((character) => alphabet.indexOf(character)).join('');
}
