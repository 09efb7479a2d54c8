import { readPieces } from './pieces.js';
import { rewriteFormula } from './rewrite.js';

const ours = /^(?:_xldudf_TONROW_|(?:_xll\.)?TONROW\.)([A-Z]+)$/i;

/** The functions of ours that a formula calls, in upper case. */
function calledOfOurs(formula: string): string[] {
  if (!/TONROW/i.test(formula)) return [];
  return readPieces(formula).flatMap(({ kind, text }) => {
    const name = kind === 'call' ? ours.exec(text)?.[1] : undefined;
    return name === undefined ? [] : name.toUpperCase();
  });
}

/** Whether a formula calls a function of ours, outside its texts. */
export const callsUs = (formula: string): boolean => calledOfOurs(formula).length > 0;

/** Whether a formula calls one of some functions of ours, named in upper case. */
export function callsAny(formula: string, names: readonly string[]): boolean {
  return calledOfOurs(formula).some((name) => names.includes(name));
}

/** Whether a formula refers to the cells another one spilled: `A2#`, in files `_xlfn.ANCHORARRAY(A2)`. */
export function refersToSpill(formula: string): boolean {
  if (!/#|ANCHORARRAY/i.test(formula)) return false;
  const pieces = readPieces(formula);
  return pieces.some(({ kind, text }, at) =>
    kind === 'call'
      ? /^(?:_xlfn\.)?ANCHORARRAY$/i.test(text)
      : text === '#' && pieces[at - 1]?.kind === 'cells',
  );
}

/** A formula as people read it: `_xldudf_TONROW_SHOP(` becomes `TONROW.SHOP(`; everything else stays as stored. */
export function shownFormula(formula: string): string {
  return rewriteFormula(formula, {
    call: ({ text }) => text.replace(/^_xldudf_TONROW_(?=[A-Z]+$)/i, 'TONROW.'),
  });
}

/** The reverse of `shownFormula`. */
export function storedFormula(formula: string): string {
  return rewriteFormula(formula, { call: ({ text }) => text.replace(ours, '_xldudf_TONROW_$1') });
}
