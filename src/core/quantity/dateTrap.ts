import { serialDate } from '../../sheet/serialDate.js';

const firstSerial = 10_959;
/** Some hosts take the years 30 to 99 for those of this century: `1-1/64` is then of 2064. */
const lastSerial = 60_267;
/** Parts of an inch that are days of a month, and those that a host reads as two-digit years. */
const daysOfParts = new Set([2, 4, 8, 16]);
const partsOfYears = new Map(
  [2, 4, 8, 16, 32, 64].flatMap((parts) => [
    [2000 + parts, parts] as const,
    ...(parts < 30 ? [] : [[1900 + parts, parts] as const]),
  ]),
);
/** Parts that are no day, so that `3/32` is read as a month and a year. */
const leastYearAlone = 32;

/** A number that is a date, and every size in inches that a spreadsheet turns into that date. */
export interface TurnedDate {
  /** `1 January 2016`. */
  date: string;
  /** `['1-1/16']`; several where different sizes turn into the same date, none where no size does. */
  readings: string[];
}

/**
 * What was probably typed when a size became a date: a whole number from 10,959 to 60,267 (the serial numbers of
 * 1930 to 2064) stands where a dimension in inches should. Hosts read `3/8` as month and day, `1-1/16` as month, day
 * and year, `3/32` as month and year; where they put the day first, `3/8` as day and month and `1-3/16` as day, month
 * and year. Undefined for any other number. The readings are sizes in inches. Common practice, no source.
 */
export function turnedDate(number: number): TurnedDate | undefined {
  if (!Number.isInteger(number) || number < firstSerial || number > lastSerial) return undefined;
  const { day, month, year, text } = serialDate(number);
  return { date: text, readings: readingsOf(month, day, year) };
}

/** Days that typing makes: of the years about now, and the first of a month in 2000, as `6 000` becomes. */
const daysTyped = { from: 43_831, to: 49_673 };
const year2000 = 2000;
const roundLength = 500;

/**
 * True for a number that is a day somebody may have made by typing a length (2020 to 2035; `6 000` in some hosts is
 * the first of June 2000), and no round length: 45,000 mm stays what it is. Common practice, no source.
 */
export function mayBeDate(number: number): boolean {
  if (!Number.isInteger(number) || number % roundLength === 0) return false;
  if (number >= daysTyped.from && number <= daysTyped.to) return true;
  const { day, year } = serialDate(number);
  return year === year2000 && day === 1;
}

function readingsOf(m: number, d: number, year: number): string[] {
  const parts = partsOfYears.get(year);
  const monthFirst = [...fraction(m, d), ...mixed(m, d, parts), ...monthAndYear(m, d, parts)];
  const dayFirst = [...(monthFirst.length === 0 ? fraction(d, m) : []), ...mixed(d, m, parts)];
  return [...new Set([...monthFirst, ...dayFirst])];
}

/** A fraction in lowest terms, below 1. */
function isFraction(over: number, under: number): boolean {
  return over % 2 === 1 && over < under;
}

function fraction(over: number, under: number): string[] {
  return daysOfParts.has(under) && isFraction(over, under) ? [`${over}/${under}`] : [];
}

function mixed(whole: number, over: number, under: number | undefined): string[] {
  return under !== undefined && isFraction(over, under) ? [`${whole}-${over}/${under}`] : [];
}

function monthAndYear(m: number, d: number, parts: number | undefined): string[] {
  return parts !== undefined && parts >= leastYearAlone && d === 1 && isFraction(m, parts)
    ? [`${m}/${parts}`]
    : [];
}
