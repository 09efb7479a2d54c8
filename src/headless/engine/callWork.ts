import { argumentAt, takesRange } from './arguments.js';
import type { EngineFunction } from './engineFunction.js';
import { CannotCompute, isMatrix, type Matrix, type Operand, type Scalar } from './values.js';

/*
 * What a call of the engine takes, counted before it is made: the engine itself knows no end.
 */

type Arguments = readonly (Operand | undefined)[];

const perCall = 20;

/** Steps for each cell of a range, where it is more than one. */
const perRangeCell: Readonly<Record<string, number>> = Object.fromEntries([
  ...['LARGE', 'SMALL', 'MEDIAN', 'PERCENTILE', 'QUARTILE', 'RANK'].map((name) => [name, 40]),
  ...['COUNTIF', 'COUNTIFS', 'SUMIF', 'SUMIFS', 'AVERAGEIF', 'AVERAGEIFS'].map((name) => [name, 6]),
  ...['MAXIFS', 'MINIFS', 'SUMPRODUCT', 'CORREL', 'SLOPE', 'INTERCEPT', 'FORECAST'].map((name) => [name, 4]),
]);

/** The steps of a call: its ranges, once for each value of an array that stands where one value belongs. */
export function workOfCall(name: string, args: Arguments, description: EngineFunction): number {
  let inRanges = 0;
  let times = 1;
  args.forEach((operand, at) => {
    if (!isMatrix(operand)) return;
    const size = operand.length * (operand[0]?.length ?? 0);
    if (takesRange(argumentAt(description, at, args.length))) inRanges += size * (perRangeCell[name] ?? 1);
    else times = Math.max(times, size);
  });
  const single = perCall + inRanges + ofTexts(name, args) + ofDays(name, args);
  return times * single + ofWildcards(name, args, description);
}

/** The values of an argument, the first of very many. */
function scalarsOf(operand: Operand | undefined): Scalar[] {
  if (operand === undefined) return [];
  return isMatrix(operand) ? operand.flat() : [operand];
}

const lengthOf = (scalar: Scalar | undefined): number =>
  typeof scalar?.value === 'string' ? scalar.value.length : 0;

/** Steps for each character of a text, and no text that grows out of all bounds on the way to one too long for a cell. */
function ofTexts(name: string, args: Arguments): number {
  let characters = 0;
  for (const operand of args) if (!isMatrix(operand)) characters += lengthOf(operand);
  if (name === 'SUBSTITUTE') {
    const [longest = 0, , put = 0] = args.map((operand) =>
      scalarsOf(operand).reduce((most, one) => Math.max(most, lengthOf(one)), 0),
    );
    if (longest * put > mostCharacters) throw tooLong(name);
  }
  if (name === 'TEXTJOIN') {
    const joined = args.slice(2).flatMap(scalarsOf);
    const all = joined.reduce(
      (sum, one) => sum + lengthOf(one),
      joined.length * lengthOf(scalarsOf(args[0])[0]),
    );
    if (all > mostCharacters) throw tooLong(name);
  }
  return characters / 4;
}

const mostCharacters = 10_000_000;
const tooLong = (name: string) => new CannotCompute(`${name} with texts this long is not evaluated here.`);

const dateFunctions =
  /^(?:DATE|DATEDIF|DAY|DAYS|EDATE|EOMONTH|MONTH|NETWORKDAYS|WEEKDAY|WEEKNUM|WORKDAY|YEAR)$/;
/** 31 December 9999, and no more days than that either way. */
const lastDay = 2_958_465;
const perDay = 20;

/** Days beyond the calendar are not asked of the engine; counting working days takes a step for each day. */
function ofDays(name: string, args: Arguments): number {
  if (!dateFunctions.test(name)) return 0;
  let most = 0;
  for (const { value } of args.flatMap(scalarsOf)) {
    const size = Math.abs(Number(value));
    if (size > lastDay)
      throw new CannotCompute(`${name} with days beyond the year 9999 is not evaluated here.`);
    if (size > most) most = size;
  }
  return name === 'WORKDAY' || name === 'NETWORKDAYS' ? perDay * most : 0;
}

/** Functions that read `*` and `?` in a text as wildcards. */
const wildcardFunctions =
  /^(?:COUNTIFS?|SUMIFS?|AVERAGEIFS?|MAXIFS|MINIFS|MATCH|VLOOKUP|HLOOKUP|LOOKUP|XLOOKUP)$/;

/** A pattern is tried at every place of a text, and from there again for each further `*`. */
function ofWildcards(name: string, args: Arguments, description: EngineFunction): number {
  if (!wildcardFunctions.test(name)) return 0;
  const sought = args.filter((_, at) => !takesRange(argumentAt(description, at, args.length)));
  const stars = sought.flatMap((operand) => scalarsOf(operand).map(starsOf));
  const deepest = stars.reduce((most, one) => Math.max(most, one), 0);
  if (deepest === 0) return 0;
  if (deepest > 3) throw new CannotCompute('It searches with more than three wildcards.');
  const patterns = stars.filter((one) => one > 0).length;
  return (
    patterns * args.reduce((sum, operand) => sum + (isMatrix(operand) ? triesIn(operand, deepest) : 0), 0)
  );
}

/** Stars of a pattern; one at its end takes what is left. */
function starsOf({ value }: Scalar): number {
  return typeof value === 'string' ? value.replace(/\*+$/, '').split('*').length - 1 : 0;
}

function triesIn(range: Matrix, stars: number): number {
  let tries = 0;
  for (const column of range)
    for (const { value } of column) if (typeof value === 'string') tries += (value.length + 1) ** stars;
  return tries;
}
