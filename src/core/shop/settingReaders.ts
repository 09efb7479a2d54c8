import { refuse } from '../inputError.js';
import { type CellValue, quoted } from '../quantity/cellValue.js';
import { readNumber } from '../quantity/readNumber.js';
import type { LengthUnit } from '../quantity/units.js';
import { nameKey } from './table.js';

/** Reads the value of a setting; throws an `InputError` for what it cannot be. */
export type Reader<Value> = (cell: CellValue, argument: string, unit: LengthUnit) => Value;

export function between(least: number, greatest: number): Reader<number> {
  const allowed = `Write a number from ${least} to ${greatest.toLocaleString('en-US')}.`;
  return (cell, argument) => {
    const number = readNumber(cell, argument, allowed);
    if (number >= least && number <= greatest) return number;
    return refuse(argument, String(cell), `${quoted(cell)} is out of range.`, allowed);
  };
}

export function oneOf<Choice extends string>(choices: readonly Choice[]): Reader<Choice> {
  return (cell, argument) =>
    choices.find((choice) => nameKey(choice) === nameKey(cell)) ??
    refuse(
      argument,
      String(cell),
      `${quoted(cell)} is not one of the choices.`,
      `Write ${choices.join(', ')}.`,
    );
}
