import { readAddresses } from '../../workbook/area.js';
import type { Place } from '../../workbook/reading.js';
import { WorkbookError } from '../../workbook/workbookError.js';

const call = /^=(?:_xldudf_TONROW_SHOP|(?:_xll\.)?TONROW\.SHOP)\((.*)\)$/is;
const table = /^([^\s[\]'!,()]+)\[(?:#All|\[#Headers\],\s?\[#Data\])\]$/i;
const name = /^[\p{L}_\\][\p{L}\d_.\\]*$/u;
const longestFormula = 8192;

/** The places that the formula of the shop cell names, in the order of SHOP's arguments; undefined where one is left out. */
export function shopPlaces(formula: string, sheet: string): (Place | undefined)[] {
  const found = call.exec(formula.slice(0, longestFormula).trim());
  if (!found)
    throw new WorkbookError(
      'failed',
      'The cell ShopStamp holds no SHOP formula. Write =TONROW.SHOP(…) in it.',
    );
  return splitArguments(found[1] ?? '').map((text) => (text === '' ? undefined : placeOf(text, sheet)));
}

function placeOf(text: string, sheet: string): Place | undefined {
  const tableName = table.exec(text)?.[1];
  if (tableName !== undefined) return { table: tableName };
  if (name.test(text) && !/^[A-Z]{1,3}\d+$/i.test(text)) return { name: text };
  return readAddresses(text, sheet)[0];
}

/** Splits at commas outside brackets, parentheses and quotes. */
export function splitArguments(text: string): string[] {
  const parts: string[] = [''];
  let depth = 0;
  let quote = '';
  for (const character of text) {
    if (quote !== '') quote = character === quote ? '' : quote;
    else if (character === '"' || character === "'") quote = character;
    else if (character === '[' || character === '(') depth += 1;
    else if (character === ']' || character === ')') depth -= 1;
    if (character === ',' && depth === 0 && quote === '') parts.push('');
    else parts[parts.length - 1] += character;
  }
  return parts.map((part) => part.trim());
}
