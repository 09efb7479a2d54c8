import { splitArguments } from './splitArguments.js';

/** A call of one of our functions: its name and its arguments as written. */
export interface FormulaCall {
  name: string;
  arguments: string[];
}

const call = /^=\+?(?:_xldudf_TONROW_|(?:_xll\.)?TONROW\.)([A-Z]+)\((.*)\)$/is;
const longestFormula = 8192;

/** The call a formula is; undefined where it is not one call of ours and nothing else. */
export function formulaCall(formula: string): FormulaCall | undefined {
  const [, name = '', written = ''] = call.exec(formula.slice(0, longestFormula).trim()) ?? [];
  const parts = name === '' ? undefined : splitArguments(written);
  return parts && { name: name.toUpperCase(), arguments: parts };
}
