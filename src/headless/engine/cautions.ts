import { CannotCompute, isErrorCode, isMatrix, type Operand, type Scalar, single } from './values.js';

/*
 * Where the engine is known to differ from the host: such a call is not evaluated, and its cell keeps its value. Found
 * by comparing with values that the host has stored in public workbooks.
 */

type Arguments = readonly (Operand | undefined)[];

/** The first serial number that means the same day everywhere: the host counts a 29 February 1900. */
const firstSureDay = 61;
/** Positions of arguments that are dates. */
const dates: Record<string, number[]> = {
  DATEDIF: [0, 1],
  DAY: [0],
  DAYS: [0, 1],
  EDATE: [0],
  EOMONTH: [0],
  MONTH: [0],
  NETWORKDAYS: [0, 1, 2],
  WEEKDAY: [0],
  WEEKNUM: [0],
  WORKDAY: [0, 2],
  YEAR: [0],
};
const firstSureYear = 1901;
/** Positions of arguments that count letters or places. */
const counting: Record<string, number[]> = {
  LEFT: [1],
  RIGHT: [1],
  MID: [1, 2],
  REPT: [1],
  REPLACE: [1, 2],
  SUBSTITUTE: [3],
};

/** Throws `CannotCompute` for arguments with which the engine may give something else than the host. */
export function refuseUncertain(name: string, args: Arguments): void {
  const numberAt = (at: number) => {
    const { value } = single(args[at]);
    return typeof value === 'number' ? value : undefined;
  };
  const isDateFormat = name === 'TEXT' && /[ymd]/i.test(String(single(args[1]).value));
  const ofDays = isDateFormat ? [0] : (dates[name] ?? []);
  if (ofDays.some((at) => scalars(args[at]).some(isEarly))) refuse(name, 'a date before March 1900');
  if (name === 'DATE' && (numberAt(0) ?? firstSureYear) < firstSureYear) refuse(name, 'a year before 1901');
  if (counting[name]?.some((at) => !Number.isInteger(numberAt(at) ?? 0)))
    refuse(name, 'a count that is a fraction');
  if (/^(?:FLOOR|CEILING)(?:\.MATH)?$/.test(name) && numberAt(1) === 0) refuse(name, 'a step of nothing');
  if (name === 'SUMPRODUCT' && new Set(args.map(sizeOf)).size > 1) refuse(name, 'ranges of different sizes');
  if (name === 'XLOOKUP' && Math.abs(numberAt(5) ?? 1) === 2) refuse(name, 'a binary search');
}

/** Throws `CannotCompute` for an error of the engine's own making: the host may call it another. */
export function refuseUncertainError(name: string, args: Arguments, result: Operand): void {
  if (isMatrix(result) || result.value !== '#VALUE!') return;
  const given = args.flatMap(scalars);
  const isPlain = given.every(({ value }) => typeof value !== 'string');
  if (isPlain && !given.some(({ value }) => isErrorCode(value))) refuse(name, 'numbers it does not take');
}

const isEarly = ({ value }: Scalar) => typeof value === 'number' && value >= 0 && value < firstSureDay;

function sizeOf(operand: Operand | undefined): string {
  return isMatrix(operand) ? `${operand.length}x${operand[0]?.length ?? 0}` : '1x1';
}

function scalars(operand: Operand | undefined): Scalar[] {
  if (operand === undefined) return [];
  return isMatrix(operand) ? operand.flat() : [operand];
}

function refuse(name: string, what: string): never {
  throw new CannotCompute(`${name} with ${what} is not evaluated here.`);
}
