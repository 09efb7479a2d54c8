import { splitArguments } from '../../sheet/formula/splitArguments.js';

/** A call of one of our functions: its name and its arguments as written. */
export interface FormulaCall {
  name: string;
  arguments: string[];
}

const call = /^=\+?(?:_xldudf_TONROW_|(?:_xll\.)?TONROW\.)([A-Z]+)\((.*)\)$/is;
const longestFormula = 8192;

/** The call a formula is; undefined where it is not one call of ours and nothing else. */
export function formulaCall(formula: string): FormulaCall | undefined {
  const found = call.exec(formula.slice(0, longestFormula).trim());
  const parts = found && splitArguments(found[2] ?? '');
  return found && parts ? { name: (found[1] ?? '').toUpperCase(), arguments: parts } : undefined;
}

/** Whether a formula calls a function of ours anywhere, outside its texts. */
export function callsUs(formula: string): boolean {
  return /(?:_xldudf_TONROW_|TONROW\.)[A-Z]+\(/i.test(formula.replaceAll(/"(?:[^"]|"")*"/g, '""'));
}
