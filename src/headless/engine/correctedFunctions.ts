import type { EngineDefinition } from './engineFunction.js';
import { addedFunctions } from './addedFunctions.js';
import { toNumber, toText } from './operators.js';
import {
  CannotCompute,
  failure,
  isErrorCode,
  isMatrix,
  longestText,
  single,
  type Operand,
  type Scalar,
} from './values.js';

/** Rounds at decimal places the way decimal digits say, not their binary neighbors: 1.005 gives 1.01. */
function roundDecimal(number: number, places: number, round: (size: number) => number): number {
  if (number === 0 || !Number.isFinite(number)) return number;
  const [digits, exponent] = Math.abs(number).toExponential(14).split('e') as [string, string];
  const shifted = Number(`${digits}e${Number(exponent) + places}`);
  if (shifted >= 1e15) return number;
  const size = Number(`${round(shifted)}e${-places}`);
  return number < 0 ? 0 - size : size;
}

function rounding(description: string, round: (size: number) => number): EngineDefinition {
  return {
    description,
    args: [
      { name: 'value', description: 'the number', type: ['NUMBER'] },
      { name: 'places', description: 'decimal places', type: ['NUMBER'], default: true },
    ],
    compute: (value, places) => {
      const [number, digits] = [toNumber(single(value)), toNumber(single(places))];
      if (typeof number !== 'number') return number;
      if (typeof digits !== 'number') return digits;
      return { value: roundDecimal(number, Math.trunc(digits), round) };
    },
  };
}

const joining: EngineDefinition = {
  description: 'Joins texts',
  args: [
    {
      name: 'text',
      description: 'texts or ranges',
      type: ['STRING', 'RANGE<STRING>'],
      repeating: true,
      acceptMatrix: true,
    },
  ],
  compute: (...operands) => {
    let text = '';
    for (const scalar of operands.flatMap(rowByRow)) {
      if (isErrorCode(scalar.value)) return scalar;
      text += toText(scalar);
      if (text.length > longestText) return failure('#VALUE!');
    }
    return { value: text };
  },
};

function rowByRow(operand: Operand | undefined): Scalar[] {
  if (!isMatrix(operand)) return operand ? [operand] : [];
  const height = operand[0]?.length ?? 0;
  return Array.from({ length: height }, (_, row) => operand.map((column) => column[row] as Scalar)).flat();
}

const searching: EngineDefinition = {
  description: 'Finds text in text, capitals or not',
  args: [
    { name: 'wanted', description: 'what to find', type: ['STRING'] },
    { name: 'text', description: 'where', type: ['STRING'] },
    { name: 'start', description: 'from which character', type: ['NUMBER'], default: true },
  ],
  compute: (wanted, text, start) => {
    const from = start === undefined ? 1 : toNumber(single(start));
    if (typeof from !== 'number') return from;
    const [sought, whole] = [toText(single(wanted)).toLowerCase(), toText(single(text)).toLowerCase()];
    if (/[?*~]/.test(sought)) throw new CannotCompute('It searches with wildcards.');
    const first = Math.trunc(from) - 1;
    const at = first < 0 || first > whole.length ? -1 : whole.indexOf(sought, first);
    return at < 0 ? failure('#VALUE!') : { value: at + 1 };
  },
};

const valueOfText: EngineDefinition = {
  description: 'The number a text stands for',
  args: [{ name: 'text', description: 'the text', type: ['ANY'] }],
  compute: (text) => {
    const number = toNumber(single(text));
    return typeof number === 'number' ? { value: number } : number;
  },
};

/** Functions of the engine that round or read differently from spreadsheet programs, done here instead. */
export const correctedFunctions: Record<string, EngineDefinition> = {
  ...addedFunctions,
  CONCAT: joining,
  CONCATENATE: joining,
  SEARCH: searching,
  VALUE: valueOfText,
  ROUND: rounding('Rounds half away from zero', Math.round),
  ROUNDUP: rounding('Rounds away from zero', Math.ceil),
  ROUNDDOWN: rounding('Rounds towards zero', Math.floor),
};
