import { isUnsureSearch } from './searches.js';
import { CannotCompute, isErrorCode, isMatrix, type Operand, type Scalar, single } from './values.js';

/*
 * Where the engine is known to differ from the host, or the host from its documentation: such a call is not evaluated,
 * and its cell keeps its value. Found by comparing with values that the host has stored in public workbooks, and with
 * what another spreadsheet computes for odd arguments of every function.
 */

type Arguments = readonly (Operand | undefined)[];

/** What a call is not evaluated with, and the functions of which that holds. */
interface Doubt {
  what: string;
  /** Positions of the arguments it is about, from 0. */
  at: Readonly<Record<string, readonly number[]>>;
  holds: (operand: Operand | undefined, args: Arguments) => boolean;
}

/** The first serial number that means the same day everywhere: the host counts a 29 February 1900. */
const firstSureDay = 61;
const firstSureYear = 1901;
const plainNumber = /^[+-]?\d+(?:\.\d+)?$/;
const many = Array.from({ length: 30 }, (_, at) => at);
const dates = {
  ...{
    DATEDIF: [0, 1],
    DAY: [0],
    DAYS: [0, 1],
    EDATE: [0],
    EOMONTH: [0],
    MONTH: [0],
    NETWORKDAYS: [0, 1, 2],
  },
  ...{ WEEKDAY: [0], WEEKNUM: [0], WORKDAY: [0, 2], YEAR: [0] },
};
const criteria = { COUNTIFS: [2], SUMIFS: [1, 3], AVERAGEIFS: [1, 3], MAXIFS: [1, 3], MINIFS: [1, 3] };

const doubts: readonly Doubt[] = [
  { what: 'a date before March 1900', at: dates, holds: (operand) => scalars(operand).some(isEarly) },
  {
    what: 'an empty text for a date',
    at: { ...dates, HOUR: [0], MINUTE: [0] },
    holds: (operand) => scalars(operand).some(({ value }) => value === ''),
  },
  { what: 'a year before 1901', at: { DATE: [0] }, holds: (operand) => numberOf(operand, 0) < firstSureYear },
  {
    what: 'a date before March 1900',
    at: { TEXT: [0] },
    holds: (operand, args) => /[ymd]/i.test(String(single(args[1]).value)) && scalars(operand).some(isEarly),
  },
  {
    what: 'a text that is no number',
    at: { TEXT: [0] },
    holds: (operand) => isText(operand) && Number.isNaN(numberOf(operand, 0)),
  },
  {
    what: 'a count that is a fraction or below zero',
    at: {
      ...{ LEFT: [1], RIGHT: [1], MID: [1, 2], REPT: [1], REPLACE: [1, 2], SUBSTITUTE: [3], INDEX: [1, 2] },
      ...{ WEEKDAY: [1], WEEKNUM: [1], XLOOKUP: [4, 5] },
    },
    holds: (operand) => {
      const count = numberOf(operand, 0);
      return !Number.isNaN(count) && !Number.isInteger(count);
    },
  },
  {
    what: 'a count below zero',
    at: { LEFT: [1], RIGHT: [1], MID: [1, 2], REPLACE: [1, 2] },
    holds: (operand) => numberOf(operand, 0) < 0,
  },
  { what: 'an occurrence below 1', at: { SUBSTITUTE: [3] }, holds: (operand) => numberOf(operand, 1) < 1 },
  {
    what: 'a step of nothing',
    at: { FLOOR: [1], CEILING: [1], 'FLOOR.MATH': [1], 'CEILING.MATH': [1] },
    holds: (operand) => numberOf(operand, 1) === 0,
  },
  {
    what: 'text for a truth value or a kind of search',
    at: {
      IF: [0],
      IFS: many.filter((at) => at % 2 === 0),
      NOT: [0],
      TEXTJOIN: [1],
      VLOOKUP: [3],
      HLOOKUP: [3],
      RANK: [2],
      MATCH: [2],
    },
    holds: isText,
  },
  {
    what: 'text, a truth value or a blank cell',
    at: { ISEVEN: [0], ISODD: [0] },
    holds: (operand) => typeof single(operand).value !== 'number',
  },
  {
    what: 'a truth value for text',
    at: { REPT: [0], VALUE: [0] },
    holds: (operand) => typeof single(operand).value === 'boolean',
  },
  { what: 'a life of nothing', at: { SLN: [2] }, holds: (operand) => numberOf(operand, 0) === 0 },
  {
    what: 'an error among its values',
    at: { SWITCH: many },
    holds: (operand) => isErrorCode(single(operand).value),
  },
  {
    what: 'a value where a range is asked for',
    at: {
      ...{ COUNTBLANK: [0], ROW: [0], COLUMN: [0], ROWS: [0], COLUMNS: [0], RANK: [1], MATCH: [1] },
      ...{ COUNTIF: [0], SUMIF: [0, 2], AVERAGEIF: [0, 2], LOOKUP: [1, 2], XLOOKUP: [1, 2] },
      ...{ COUNTIFS: [0, 2], SUMIFS: [0, 1, 3], AVERAGEIFS: [0, 1, 3], MAXIFS: [0, 1, 3], MINIFS: [0, 1, 3] },
    },
    holds: (operand) => operand !== undefined && !isMatrix(operand),
  },
  {
    what: 'ranges of different sizes',
    at: { SUMPRODUCT: many, ...criteria },
    holds: (operand, args) => operand !== undefined && sizeOf(operand) !== sizeOf(args[0]),
  },
  { what: 'a binary search', at: { XLOOKUP: [5] }, holds: (operand) => Math.abs(numberOf(operand, 1)) === 2 },
];

/** Throws `CannotCompute` for arguments with which the engine may give something else than the host. */
export function refuseUncertain(name: string, args: Arguments): void {
  for (const { what, at, holds } of doubts) {
    if (at[name]?.some((position) => position < args.length && holds(args[position], args)))
      refuse(name, what);
  }
  if (isUnsureSearch(name, args)) refuse(name, 'a search by size through values that are not sorted numbers');
}

/** Functions that take an error among their arguments without giving it on. */
const takesErrors =
  /^(?:IFERROR|IFNA|IFS?|CHOOSE|IS[A-Z]+|COUNT[A-Z]*|N|T|TYPE|SUMIFS?|AVERAGEIFS?|MAXIFS|MINIFS|AGGREGATE)$/;

/** Throws `CannotCompute` for a result of the engine's own making: the host may say otherwise. */
export function refuseUncertainResult(name: string, args: Arguments, result: Operand): void {
  if (isMatrix(result)) return;
  const { value } = result;
  if (name === 'RATE' && typeof value === 'number' && value < 0) refuse(name, 'a rate below zero');
  const errors = args.filter((operand) => !isMatrix(operand)).flatMap((operand) => single(operand).value);
  if (!takesErrors.test(name) && errors.some(isErrorCode) && !errors.includes(value))
    refuse(name, 'an error');
  if (value !== '#VALUE!') return;
  const given = args.flatMap(scalars);
  const isPlain = given.every((each) => !isText(each) || !Number.isNaN(numberOf(each, 0)));
  if (isPlain && !given.some((each) => isErrorCode(each.value))) refuse(name, 'numbers it does not take');
}

const isEarly = (scalar: Scalar) => {
  const day = numberOf(scalar, Number.NaN);
  return day < firstSureDay && scalar.value !== null && scalar.value !== '';
};

function isText(operand: Operand | undefined): boolean {
  const { value } = single(operand);
  return typeof value === 'string' && !isErrorCode(value);
}

/** The number an argument stands for; `left` for one that was left out, NaN for text that is none. */
function numberOf(operand: Operand | undefined, left: number): number {
  if (operand === undefined) return left;
  const { value } = single(operand);
  if (typeof value !== 'string') return Number(value ?? 0);
  return plainNumber.test(value) ? Number(value) : Number.NaN;
}

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
