import { CannotCompute, failure, isMatrix, topLeft, type Operand } from './values.js';

/** Functions that read `*` and `?` in a text as wildcards. */
const wildcardFunctions =
  /^(?:COUNTIFS?|SUMIFS?|AVERAGEIFS?|MAXIFS|MINIFS|MATCH|VLOOKUP|HLOOKUP|LOOKUP|XLOOKUP)$/;

/** Many wildcards in one text can take the engine hours. */
function checkWildcards(name: string, operands: (Operand | undefined)[]): void {
  if (!wildcardFunctions.test(name)) return;
  for (const operand of operands) {
    if (operand === undefined || isMatrix(operand) || typeof operand.value !== 'string') continue;
    if (operand.value.split('*').length > 4)
      throw new CannotCompute('It searches with more than three wildcards.');
  }
}

/** The number formats that the engine shows as hosts do. */
const plainFormat = /^(?:#,##)?0+(?:\.0+)?%?$|^yyyy-mm-dd$/;

/** Arguments that hosts assume and the engine does not. */
export function completeArguments(name: string, operands: (Operand | undefined)[]): (Operand | undefined)[] {
  checkWildcards(name, operands);
  if (name === 'IF' && operands.length === 2) return [...operands, { value: false }];
  if (name === 'TEXT' && !plainFormat.test(String(topLeft(operands[1] ?? failure('')).value))) {
    throw new CannotCompute('It uses TEXT with a format that is not evaluated here.');
  }
  if (name === 'IFS') return [...operands, { value: true }, failure('#N/A')];
  const [range, position] = operands;
  // Of a single row, the second argument is the column.
  const isRow = isMatrix(range) && range.length > 1 && range[0]?.length === 1;
  return name === 'INDEX' && operands.length === 2 && isRow ? [range, { value: 1 }, position] : operands;
}
