import { numberOfText, textOfNumber } from './text.js';
import {
  CannotCompute,
  checkArraySize,
  failure,
  isErrorCode,
  isMatrix,
  longestText,
  type Operand,
  type Scalar,
} from './values.js';

/** Applies an operator to every pair of an array's elements; a single value or line goes with all. */
export function broadcast(left: Operand, right: Operand, apply: (a: Scalar, b: Scalar) => Scalar): Operand {
  if (!isMatrix(left) && !isMatrix(right)) return apply(left, right);
  const [a, b] = [isMatrix(left) ? left : [[left]], isMatrix(right) ? right : [[right]]];
  const columns = Math.max(a.length, b.length);
  const rows = Math.max(a[0]?.length ?? 0, b[0]?.length ?? 0);
  checkArraySize(columns, rows);
  const pick = (matrix: Scalar[][], column: number, row: number): Scalar | undefined => {
    const line = matrix[matrix.length === 1 ? 0 : column];
    return line?.[line.length === 1 ? 0 : row];
  };
  return Array.from({ length: columns }, (_, column) =>
    Array.from({ length: rows }, (__, row) => {
      const [x, y] = [pick(a, column, row), pick(b, column, row)];
      return x && y ? apply(x, y) : failure('#N/A');
    }),
  );
}

/** The number a value stands for in arithmetic, or the error it gives. */
export function toNumber(scalar: Scalar): number | Scalar {
  const { value } = scalar;
  if (typeof value === 'number') return value;
  if (value === null) return 0;
  if (typeof value === 'boolean') return value ? 1 : 0;
  if (isErrorCode(value)) return scalar;
  return numberOfText(value) ?? failure('#VALUE!');
}

const finite = (value: number): Scalar => (Number.isFinite(value) ? { value } : failure('#NUM!'));

const arithmetic: Record<string, (a: number, b: number) => Scalar> = {
  '+': (a, b) => finite(settled(a + b, a, b)),
  '-': (a, b) => finite(settled(a - b, a, b)),
  '*': (a, b) => finite(a * b),
  '/': (a, b) => (b === 0 ? failure('#DIV/0!') : finite(a / b)),
  '^': (a, b) => {
    if (a === 0 && b === 0) return failure('#NUM!');
    if (a === 0 && b < 0) return failure('#DIV/0!');
    return finite(a ** b);
  },
};

/** A sum that is nothing but the rounding of its parts is 0, as spreadsheets have it. */
function settled(sum: number, a: number, b: number): number {
  return sum !== 0 && Math.abs(sum) < 1e-15 * Math.max(Math.abs(a), Math.abs(b)) ? 0 : sum;
}

/** The value of `left operator right` for single values. */
export function applyOperator(operator: string, left: Scalar, right: Scalar): Scalar {
  const compute = arithmetic[operator];
  if (compute) {
    const a = toNumber(left);
    if (typeof a !== 'number') return a;
    const b = toNumber(right);
    return typeof b === 'number' ? compute(a, b) : b;
  }
  if (isErrorCode(left.value)) return left;
  if (isErrorCode(right.value)) return right;
  if (operator === '&') return ofLength(toText(left) + toText(right));
  return { value: holds(operator, left.value, right.value) };
}

/** A text, or the error that a longer one than cells hold gives. */
export const ofLength = (text: string): Scalar =>
  text.length > longestText ? failure('#VALUE!') : { value: text };

/** A value as text. */
export function toText({ value }: Scalar): string {
  if (typeof value === 'number') return textOfNumber(value);
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return value ?? '';
}

type Plain = Scalar['value'];

function holds(operator: string, left: Plain, right: Plain): boolean {
  const equality = operator === '=' || operator === '<>';
  const order = compare(left ?? blankLike(right), right ?? blankLike(left), equality);
  switch (operator) {
    case '=':
      return order === 0;
    case '<>':
      return order !== 0;
    case '<':
      return order < 0;
    case '>':
      return order > 0;
    case '<=':
      return order <= 0;
    default:
      return order >= 0;
  }
}

function blankLike(other: Plain): Exclude<Plain, null> {
  return typeof other === 'string' ? '' : typeof other === 'boolean' ? false : 0;
}

const rank = { number: 0, string: 1, boolean: 2 } as Record<string, number>;

/** Numbers come before text, text before logical values. */
function compare(left: Exclude<Plain, null>, right: Exclude<Plain, null>, equality: boolean): number {
  if (typeof left !== typeof right) return (rank[typeof left] as number) - (rank[typeof right] as number);
  if (typeof left === 'number') return compareNumbers(left, right as number);
  if (typeof left === 'string')
    return compareTexts(left.toLowerCase(), (right as string).toLowerCase(), equality);
  return Number(left) - Number(right);
}

function compareNumbers(left: number, right: number): number {
  const difference = left - right;
  const close = Math.abs(difference) < 1e-14 * Math.max(Math.abs(left), Math.abs(right));
  return close && left.toPrecision(15) === right.toPrecision(15) ? 0 : difference;
}

function compareTexts(left: string, right: string, equality: boolean): number {
  if (left === right) return 0;
  if (equality) return 1;
  if (!/^[a-z0-9 ]*$/.test(left + right))
    throw new CannotCompute('It orders text with signs or accents in it.');
  return left < right ? -1 : 1;
}

/** The value of a sign or a percent sign applied to a single value. */
export function applySign(sign: '-' | '+' | '%', operand: Scalar): Scalar {
  if (sign === '+') return operand;
  const number = toNumber(operand);
  if (typeof number !== 'number') return number;
  return { value: sign === '-' ? 0 - number : number / 100 };
}
