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

/** Splits at commas outside brackets and quotes; undefined where a bracket closes that was not opened. */
function splitArguments(text: string): string[] | undefined {
  const parts: string[] = [''];
  let depth = 0;
  let quote = '';
  for (const character of text) {
    if (quote !== '') quote = character === quote ? '' : quote;
    else if (character === '"' || (character === "'" && depth === 0)) quote = character;
    else if ('[({'.includes(character)) depth += 1;
    else if ('])}'.includes(character)) depth -= 1;
    if (depth < 0) return undefined;
    if (character === ',' && depth === 0 && quote === '') parts.push('');
    else parts[parts.length - 1] += character;
  }
  const trimmed = parts.map((part) => part.trim());
  return trimmed.length === 1 && trimmed[0] === '' ? [] : trimmed;
}
