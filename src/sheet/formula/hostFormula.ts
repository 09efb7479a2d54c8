import { readPieces } from './pieces.js';
import { rewriteFormula } from './rewrite.js';
import { parseStructured } from './tableReference.js';

/** A formula as hosts take it, from the way files store it: `_xlfn.ANCHORARRAY(A2)` is `A2#`. */
export function hostFormula(formula: string): string {
  let host = '';
  // Of each parenthesis that is open, whether a spill is named in it.
  const open: boolean[] = [];
  let isSpill = false;
  for (const { kind, text } of readPieces(formula)) {
    if (kind === 'call') {
      isSpill = /^_xlfn\.ANCHORARRAY$/i.test(text);
      if (!isSpill) host += hostName(text);
    } else if (text === '(') {
      open.push(isSpill);
      if (!isSpill) host += text;
      isSpill = false;
    } else if (text === ')') host += open.pop() ? '#' : text;
    else host += text;
  }
  return host;
}

const hostName = (stored: string): string =>
  stored.replace(/^_xldudf_TONROW_/i, 'TONROW.').replaceAll(/_xl(?:fn|ws)\./gi, '');

/** Whether two formulas are the same: hosts give back `[@Mark]` for `[[#This Row],[Mark]]`, and their own spaces. */
export function sameFormula(a: string, b: string): boolean {
  return normal(a) === normal(b);
}

function normal(formula: string): string {
  return rewriteFormula(hostFormula(formula), {
    table: ({ name, bracket }) => name + (JSON.stringify(parseStructured(bracket.slice(1, -1))) ?? bracket),
  })
    .replaceAll(/,\s+/g, ',')
    .toUpperCase();
}
