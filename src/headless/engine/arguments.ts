import type { EngineArgument, EngineFunction } from './engineFunction.js';
import { toNumber, toText } from './operators.js';
import { isErrorCode, isMatrix, type Operand, type Scalar } from './values.js';

/** The description that goes with each of `count` arguments given. */
export function argumentAt(
  description: EngineFunction,
  position: number,
  count: number,
): EngineArgument | undefined {
  const { args, nbrArgRepeating } = description;
  const firstRepeating = args.findIndex((argument) => argument.repeating);
  if (firstRepeating < 0 || position < firstRepeating) return args[position];
  const after = args.length - firstRepeating - nbrArgRepeating;
  if (after > 0 && position >= count - after) return args[args.length - (count - position)];
  return args[firstRepeating + ((position - firstRepeating) % nbrArgRepeating)];
}

const isRange = (type: string) => type.startsWith('RANGE');

/** Whether a reference given as this argument is passed as a range. */
export const takesRange = (argument: EngineArgument | undefined) => (argument?.type ?? []).some(isRange);

/** Reads single values as the host does where the argument says what it wants: text as a number, a number as text. */
export function readEngineArguments(
  description: EngineFunction,
  args: (Operand | undefined)[],
): (Operand | undefined)[] {
  return args.map((operand, i) => {
    const argument = argumentAt(description, i, args.length);
    const wanted = new Set((argument?.type ?? []).filter((type) => !isRange(type)));
    if (operand === undefined || wanted.has('ANY') || isMatrix(operand)) return operand;
    if (wanted.size === 1 && wanted.has('NUMBER')) return readNumber(operand);
    if (wanted.size === 1 && wanted.has('STRING')) return readText(operand);
    return operand;
  });
}

function readNumber(scalar: Scalar): Scalar {
  if (typeof scalar.value !== 'string' || isErrorCode(scalar.value)) return scalar;
  const number = toNumber(scalar);
  return typeof number === 'number' ? { value: number } : number;
}

const readText = (scalar: Scalar): Scalar =>
  typeof scalar.value === 'number' ? { value: toText(scalar) } : scalar;
