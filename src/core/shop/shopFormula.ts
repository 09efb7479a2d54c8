import { refuse } from '../inputError.js';
import { splitArguments } from '../../sheet/formula/splitArguments.js';

/** A range named in the formula of the shop cell: a table, a defined name, or cells of a sheet. */
export type ShopRange =
  | { kind: 'table'; name: string }
  | { kind: 'name'; name: string }
  | { kind: 'cells'; sheet?: string; address: string };

const longestFormula = 8192;
const tablePattern = /^([^\s[\]'!,()]+)\[(?:#All|\[#Headers\],\s?\[#Data\])\]$/i;
const cellsPattern =
  /^(?:(?:'((?:[^']|'')+)'|([^\s'![\](),]+))!)?(\$?[A-Z]{1,3}\$?\d{1,7}(?::\$?[A-Z]{1,3}\$?\d{1,7})?)$/i;
const namePattern = /^[\p{L}_\\][\p{L}\d_.\\]*$/u;

/**
 * The ranges that the formula of the shop cell names, in the order of SHOP's arguments; undefined where an
 * argument is left out. The names of the tables are the user's own. Throws for a formula that is no SHOP call.
 */
export function shopRanges(formula: string): (ShopRange | undefined)[] {
  const call = /^=(?:_xldudf_TONROW_SHOP|(?:_xll\.)?TONROW\.SHOP)\((.*)\)$/is.exec(
    formula.slice(0, longestFormula).trim(),
  );
  if (!call)
    return refuse('ShopStamp', formula, 'the cell holds no SHOP formula.', 'Write =TONROW.SHOP(…) in it.');
  const given = splitArguments(call[1] ?? '') ?? [call[1] ?? ''];
  return given.map((text) => (text === '' ? undefined : readRange(text)));
}

function readRange(text: string): ShopRange {
  const table = tablePattern.exec(text)?.[1];
  if (table !== undefined) return { kind: 'table', name: table };
  const cells = cellsPattern.exec(text);
  if (cells?.[3] !== undefined) {
    const sheet = cells[1]?.replaceAll("''", "'") ?? cells[2];
    return sheet === undefined
      ? { kind: 'cells', address: cells[3] }
      : { kind: 'cells', sheet, address: cells[3] };
  }
  if (namePattern.test(text)) return { kind: 'name', name: text };
  return refuse(
    'ShopStamp',
    text,
    `'${text.slice(0, 60)}' is no table, name or range.`,
    'Give SHOP whole tables with their headings.',
  );
}
