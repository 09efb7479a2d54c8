import type { EngineDefinition } from './engine';
import { toNumber } from './operators';
import { isMatrix, type Operand, type Scalar } from './values';

/** Rounds at decimal places the way decimal digits say, not their binary neighbours: 1.005 gives 1.01. */
export function roundDecimal(number: number, places: number, round: (size: number) => number): number {
  if (number === 0 || !Number.isFinite(number)) return number;
  const [digits, exponent] = Math.abs(number).toExponential(14).split('e') as [string, string];
  const shifted = Number(`${digits}e${Number(exponent) + places}`);
  if (shifted >= 1e15) return number;
  const size = Number(`${round(shifted)}e${-places}`);
  return number < 0 ? 0 - size : size;
}

const single = (operand: Operand | undefined): Scalar =>
  operand === undefined
    ? { value: null }
    : isMatrix(operand)
      ? (operand[0]?.[0] ?? { value: null })
      : operand;

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

/** Functions of the engine that round or read differently from spreadsheet programs, done here instead. */
export const overrides: Record<string, EngineDefinition> = {
  ROUND: rounding('Rounds half away from zero', Math.round),
  ROUNDUP: rounding('Rounds away from zero', Math.ceil),
  ROUNDDOWN: rounding('Rounds towards zero', Math.floor),
};
