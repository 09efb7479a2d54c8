import type { EngineArgument, EngineDefinition } from './engineFunction.js';
import { toNumber } from './operators.js';
import { failure, isErrorCode, isMatrix, single, type Operand, type Scalar } from './values.js';

/*
 * Ordinary functions that the engine lacks.
 */

type Numbers = (numbers: number[]) => number | Scalar;

const argument = (name: string, type: string[], more: EngineArgument = {}) => ({
  name,
  description: name,
  type,
  ...more,
});

/** A function of numbers, one argument each. */
function ofNumbers(description: string, names: string[], compute: Numbers): EngineDefinition {
  return {
    description,
    args: names.map((name) => argument(name, ['NUMBER'])),
    compute: (...operands) => {
      const numbers: number[] = [];
      for (const operand of operands) {
        const number = toNumber(single(operand));
        if (typeof number !== 'number') return number;
        numbers.push(number);
      }
      const result = compute(numbers);
      if (typeof result !== 'number') return result;
      return Number.isFinite(result) ? { value: result } : failure('#NUM!');
    },
  };
}

function multiple([number, step]: number[]): number | Scalar {
  const [n, s] = [number as number, step as number];
  if (n === 0 || s === 0) return 0;
  if (Math.sign(n) !== Math.sign(s)) return failure('#NUM!');
  return Math.round(Number((n / s).toPrecision(15))) * s;
}

function factorial([number]: number[]): number | Scalar {
  const whole = Math.trunc(number as number);
  if (whole < 0 || whole > 170) return failure('#NUM!');
  let product = 1;
  for (let n = 2; n <= whole; n++) product *= n;
  return product;
}

/** Away from zero to the next even number. */
function even([number]: number[]): number {
  const size = 2 * Math.ceil(Math.abs(number as number) / 2);
  return (number as number) < 0 ? 0 - size : size;
}

const sumOfSquares: EngineDefinition = {
  description: 'Sum of squares',
  args: [argument('number', ['NUMBER', 'RANGE<NUMBER>'], { repeating: true, acceptMatrix: true })],
  compute: (...operands) => {
    let sum = 0;
    for (const scalar of operands.flatMap(numbersOf)) {
      if (typeof scalar !== 'number') return scalar;
      sum += scalar * scalar;
    }
    return { value: sum };
  },
};

/** Of a range only numbers count; a value given by itself counts as a number. */
function numbersOf(operand: Operand | undefined): (number | Scalar)[] {
  if (operand === undefined) return [];
  if (!isMatrix(operand)) return [toNumber(operand)];
  return operand.flat().flatMap((scalar): (number | Scalar)[] => {
    if (typeof scalar.value === 'number') return [scalar.value];
    return isErrorCode(scalar.value) ? [scalar] : [];
  });
}

const repeated: EngineDefinition = {
  description: 'Repeats a text',
  args: [argument('text', ['STRING']), argument('times', ['NUMBER'])],
  compute: (text, times) => {
    const count = toNumber(single(times));
    if (typeof count !== 'number') return count;
    const whole = String(single(text).value ?? '');
    const fits = count >= 0 && Math.trunc(count) * whole.length <= 32_767;
    return fits ? { value: whole.repeat(Math.trunc(count)) } : failure('#VALUE!');
  },
};

const asNumber: EngineDefinition = {
  description: 'A value as a number',
  args: [argument('value', ['ANY'])],
  compute: (operand) => {
    const scalar = single(operand);
    if (isErrorCode(scalar.value)) return scalar;
    return { value: typeof scalar.value === 'string' ? 0 : Number(scalar.value) };
  },
};

const asText: EngineDefinition = {
  description: 'A value if it is text',
  args: [argument('value', ['ANY'])],
  compute: (operand) => {
    const scalar = single(operand);
    return typeof scalar.value === 'string' ? scalar : { value: '' };
  },
};

export const addedFunctions: Record<string, EngineDefinition> = {
  SIGN: ofNumbers('Sign', ['number'], ([n]) => Math.sign(n as number)),
  RADIANS: ofNumbers('Degrees to radians', ['angle'], ([n]) => ((n as number) * Math.PI) / 180),
  LOG10: ofNumbers('Decimal logarithm', ['number'], ([n]) =>
    (n as number) > 0 ? Math.log10(n as number) : NaN,
  ),
  EVEN: ofNumbers('Next even number', ['number'], even),
  FACT: ofNumbers('Factorial', ['number'], factorial),
  MROUND: ofNumbers('Nearest multiple', ['number', 'multiple'], multiple),
  QUOTIENT: ofNumbers('Whole part of a division', ['number', 'divisor'], ([n, d]) =>
    d === 0 ? failure('#DIV/0!') : Math.trunc((n as number) / (d as number)),
  ),
  SUMSQ: sumOfSquares,
  REPT: repeated,
  N: asNumber,
  T: asText,
};
