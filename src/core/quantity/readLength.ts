import { type CellValue, isBlank, plainText, quoted } from './cellValue.js';
import { mayBeDate, type TurnedDate, turnedDate } from './dateTrap.js';
import { formatLength } from './formatLength.js';
import { type LengthKind, type LengthKindName, lengthKinds } from './lengthKind.js';
import { allowedRange } from './allowedRange.js';
import { lengthExamples, lengthText, type WrittenLength } from './lengthText.js';
import { InputError, refuse } from '../inputError.js';
import { memo } from './memo.js';
import { type LengthUnit, mmPer } from './units.js';

const remembered = memo<number>();

/**
 * A length in mm from a cell: a number in the shop's unit, or text in trade notation that may carry its own.
 * Throws for what is no length, may be read two ways, lies outside what the kind of dimension can be, or is
 * a fraction that a spreadsheet turned into a date.
 */
export function readLength(
  value: CellValue,
  argument: string,
  unit: LengthUnit,
  kind: LengthKindName = 'length',
): number {
  if (isBlank(value)) return refuse(argument, '', 'the cell is blank.', lengthExamples(unit));
  if (typeof value === 'boolean') {
    return notALength(value, argument, unit);
  }
  if (typeof value === 'number') return bareLength(value, value, argument, unit, kind);
  return remembered(`${unit}|${kind}|${argument}|${value}`, () =>
    readLengthText(value, argument, unit, kind),
  );
}

/** As `readLength` for text, for readers that remember what they read themselves. */
export function readLengthText(
  value: string,
  argument: string,
  unit: LengthUnit,
  kind: LengthKindName,
): number {
  const written = lengthText(value, argument, unit);
  refuseThousands(written, value, argument, kind);
  if (written.bare === undefined) return within(written.mm, value, argument, unit, lengthKinds[kind], false);
  if (written.leadingPoint && unit === 'mm') notALength(value, argument, unit);
  if (written.isFraction && unit === 'mm') refuseFraction(written.bare, value, argument);
  return bareLength(written.bare, value, argument, unit, kind);
}

function notALength(value: CellValue, argument: string, unit: LengthUnit): never {
  return refuse(argument, String(value), `${quoted(value)} is not a length.`, lengthExamples(unit));
}

/** A point before three digits that people who work in mm may read either way: `6.000`. */
function refuseThousands(
  { bare, mm = bare, asThousands }: WrittenLength,
  value: string,
  argument: string,
  kindName: LengthKindName,
): void {
  const { leastMm, greatestMm } = lengthKinds[kindName];
  if (asThousands === undefined || mm === undefined) return;
  if (asThousands < leastMm || asThousands > greatestMm) return;
  const unit = bare === undefined ? ' mm' : '';
  const [point, thousands] = [mm, asThousands].map((each) => `${Number(each.toFixed(6))}${unit}`);
  // What is too small for the point is not written again that way.
  const fix = mm < leastMm ? thousands : `${point} or ${thousands}`;
  refuse(argument, value, `${quoted(value)} may be ${point} or ${thousands}.`, `Write ${fix}.`);
}

/** A fraction says inches, the shop says mm: both are named, neither is taken. */
function refuseFraction(inches: number, value: string, argument: string): never {
  const mm = formatLength(inches * mmPer.in, 'mm');
  const problem = `${quoted(value)} is a fraction of an inch, and bare sizes are in mm here.`;
  return refuse(argument, value, problem, `Write ${plainText(value)} in or ${mm}.`);
}

function bareLength(
  number: number,
  value: CellValue,
  argument: string,
  unit: LengthUnit,
  kindName: LengthKindName,
): number {
  const kind: LengthKind = lengthKinds[kindName];
  if (!Number.isFinite(number)) return notALength(value, argument, unit);
  const turned = turnedDate(number);
  if (turned && kind.fractionProne && unit === 'in') return refuseDate(turned, number, value, argument);
  if (turned && !kind.fractionProne && unit === 'mm' && typeof value === 'number' && mayBeDate(number))
    return refuseLengthOrDate(turned, number, argument);
  return within(number * mmPer[unit], value, argument, unit, kind, true, turned?.date);
}

/** A length that is a day of these years, as one that was typed and became a date. */
function refuseLengthOrDate({ date }: TurnedDate, number: number, argument: string): never {
  const problem = `${number} may be a length that became the date ${date}, or ${number} mm.`;
  return refuse(argument, String(number), problem, `Type it again as text, or write "${number} mm".`);
}

/** A date stands where a size should: the size is told where only one turns into this date. */
function refuseDate(
  { date, readings }: TurnedDate,
  number: number,
  value: CellValue,
  argument: string,
): never {
  const [only, ...others] = readings;
  if (only !== undefined && others.length === 0) {
    const problem = `${number} looks like ${only} that the spreadsheet turned into a date.`;
    return refuseAsDate(argument, value, problem, `Format the cell as text and type ${only} again.`);
  }
  const what = only === undefined ? 'a size that cannot be told' : `any of ${readings.join(', ')}`;
  const problem = `${number} is a date, ${date}: ${what}, turned into a date by the spreadsheet.`;
  return refuseAsDate(argument, value, problem, `Write the size as text, for example '${only ?? '1-1/16'}.`);
}

function refuseAsDate(argument: string, value: CellValue, problem: string, allowed: string): never {
  const cause = 'turned into a date';
  throw new InputError({ code: 'invalid', argument, received: String(value), problem, allowed, cause });
}

function within(
  mm: number,
  value: CellValue,
  argument: string,
  unit: LengthUnit,
  kind: LengthKind,
  bare: boolean,
  date?: string,
): number {
  if (mm >= kind.leastMm && mm <= kind.greatestMm) return mm;
  const range = allowedRange(kind, unit);
  if (mm <= 0) return refuse(argument, String(value), `${quoted(value)} is not above zero.`, range);
  if (!bare) return refuse(argument, String(value), `${quoted(value)} is out of range.`, range);
  const number = quoted(value).replaceAll("'", '');
  const [read, other] = unit === 'in' ? (['inches', 'mm'] as const) : (['mm', 'in'] as const);
  const otherMm = (mm / mmPer[unit]) * mmPer[other];
  const meantOther = otherMm >= kind.leastMm && otherMm <= kind.greatestMm;
  const inUnit = `${range} Write "${number} ${other}"`;
  const fix = meantOther ? `${inUnit}, or add the shop cell or "${other}".` : range;
  const fixInCell = meantOther ? `${inUnit}.` : range;
  const what = kind.fractionProne ? 'size' : 'length';
  const asDate = date === undefined ? '' : `; it may also be a ${what} that became the date ${date}`;
  const again = date === undefined ? '' : ' If it became a date, type it again as text.';
  return refuse(
    argument,
    String(value),
    `${quoted(value)} would be ${number} ${read}${asDate}.`,
    `${fix}${again}`,
    `${fixInCell}${again}`,
  );
}
