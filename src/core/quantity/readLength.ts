import { type CellValue, isBlank, quoted } from './cellValue.js';
import { fractionTurnedDate } from './dateTrap.js';
import { formatLength } from './formatLength.js';
import { type LengthKind, type LengthKindName, lengthKinds } from './lengthKind.js';
import { lengthExamples, lengthText } from './lengthText.js';
import { refuse } from '../inputError.js';
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
  if (isBlank(value)) return refuse(argument, '', 'the cell is blank.', lengthExamples);
  if (typeof value === 'boolean') {
    return refuse(argument, String(value), `${quoted(value)} is not a length.`, lengthExamples);
  }
  if (typeof value === 'number') return bareLength(value, value, argument, unit, kind);
  return remembered(`${unit}|${kind}|${argument}|${value}`, () => {
    const written = lengthText(value, argument);
    if (written.bare !== undefined) return bareLength(written.bare, value, argument, unit, kind);
    return within(written.mm, value, argument, unit, lengthKinds[kind], false);
  });
}

function bareLength(
  number: number,
  value: CellValue,
  argument: string,
  unit: LengthUnit,
  kindName: LengthKindName,
): number {
  const kind: LengthKind = lengthKinds[kindName];
  if (!Number.isFinite(number))
    return refuse(argument, String(value), `${quoted(value)} is not a length.`, lengthExamples);
  const fraction = unit === 'in' && kind.fractionProne ? fractionTurnedDate(number) : undefined;
  if (fraction) {
    return refuse(
      argument,
      String(value),
      `${number} looks like ${fraction} that the spreadsheet turned into a date.`,
      `Format the cell as text and type ${fraction} again.`,
    );
  }
  return within(number * mmPer[unit], value, argument, unit, kind, true);
}

function within(
  mm: number,
  value: CellValue,
  argument: string,
  unit: LengthUnit,
  kind: LengthKind,
  bare: boolean,
): number {
  if (mm >= kind.leastMm && mm <= kind.greatestMm) return mm;
  const range = `Allowed: ${formatLength(kind.leastMm, unit)} to ${formatLength(kind.greatestMm, unit)} ${unit}.`;
  if (mm <= 0) return refuse(argument, String(value), `${quoted(value)} is not above zero.`, range);
  if (!bare) return refuse(argument, String(value), `${quoted(value)} is out of range.`, range);
  const number = quoted(value).replaceAll("'", '');
  const [read, other] = unit === 'in' ? (['inches', 'mm'] as const) : (['mm', 'in'] as const);
  const otherMm = (mm / mmPer[unit]) * mmPer[other];
  const meantOther = otherMm >= kind.leastMm && otherMm <= kind.greatestMm;
  const fix = meantOther ? `${range} Write "${number} ${other}", or add the shop cell or "${other}".` : range;
  return refuse(argument, String(value), `${quoted(value)} would be ${number} ${read}.`, fix);
}
