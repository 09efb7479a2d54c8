import { CannotCompute, failure, isMatrix, topLeft, type Operand } from './values.js';

/** The number formats that the engine shows as hosts do. */
const plainFormat = /^(?:#,##)?0+(?:\.0+)?%?$|^yyyy-mm-dd$/;

/** Arguments that hosts assume and the engine does not. */
export function completeArguments(name: string, operands: (Operand | undefined)[]): (Operand | undefined)[] {
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
