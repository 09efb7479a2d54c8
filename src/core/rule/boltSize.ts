import { refuse, refuseUnknown } from '../inputError.js';
import { type CellValue, isBlank, quoted } from '../quantity/cellValue.js';
import { formatLength } from '../quantity/formatLength.js';
import { readLength } from '../quantity/readLength.js';
import { type LengthUnit, mmPer } from '../quantity/units.js';
import { lengthValue } from '../working/namedValue.js';
import type { NamedValue } from '../working/working.js';

/** A bolt by its nominal diameter; the system says which tables hold for it. */
export interface BoltSize {
  diameterMm: number;
  system: LengthUnit;
  /** `3/4 in` or `M20`. */
  name: string;
}

const longestText = 60;
const sameSizeMm = 0.02;
const allowed = 'Write 3/4, 3/4" or M20.';

/**
 * Reads a bolt size: a number in the shop's unit, `3/4`, `3/4"`, `M20`, `M 20`, `20 mm`. A fraction means inches
 * in every shop.
 *
 * @param value the cell
 * @param argument what the cell is, for the refusal
 * @param unit the shop's unit, for numbers without one
 * @returns the bolt size
 * Valid from 1/8 in to 4 in (3 to 101 mm). Throws `invalid` for what is no bolt size, and for a number that was a
 * fraction before the spreadsheet turned it into a date.
 * @example readBolt('M 20', 'Bolt', 'in').name // 'M20'
 * Source: common practice, no source.
 */
export function readBolt(value: CellValue, argument: string, unit: LengthUnit): BoltSize {
  if (isBlank(value)) return refuse(argument, '', 'the cell is blank.', allowed);
  if (typeof value !== 'string') return boltSize(readLength(value, argument, unit, 'bolt'), unit);
  if (value.length > longestText)
    return refuse(argument, value, `${quoted(value)} is not a bolt size.`, allowed);
  const text = value.trim();
  const metric = /^m ?(\d[\d.,]*)(?: ?mm)?$/i.exec(text);
  if (metric) return boltSize(readLength(`${metric[1]} mm`, argument, 'mm', 'bolt'), 'mm');
  if (/^m/i.test(text) || !/[\d½¼¾⅓⅔⅛⅜⅝⅞]/.test(text))
    return refuse(argument, value, `${quoted(value)} is not a bolt size.`, allowed);
  const system = systemOf(text) ?? unit;
  return boltSize(readLength(text, argument, system, 'bolt'), system);
}

function systemOf(text: string): LengthUnit | undefined {
  if (/\d ?(?:mm|cm)$/i.test(text)) return 'mm';
  return /["'\u2032\u2033\u201C\u201D/\u2044\u2215½¼¾⅓⅔⅛⅜⅝⅞]|\d ?in/i.test(text) ? 'in' : undefined;
}

function boltSize(diameterMm: number, system: LengthUnit): BoltSize {
  const size = formatLength(diameterMm, system);
  return { diameterMm, system, name: system === 'in' ? `${size} in` : `M${size}` };
}

/** The bolt's diameter in its own system: inches or mm. */
export function ownDiameter(bolt: BoltSize): number {
  return bolt.diameterMm / mmPer[bolt.system];
}

/** The diameter of a bolt, as a step shows it; a metric bolt keeps its name, which inches would hide. */
export function boltValue(bolt: BoltSize): NamedValue {
  const which = bolt.system === 'mm' ? `bolt ${bolt.name}` : 'the bolt';
  return lengthValue('d', `diameter of ${which}`, bolt.diameterMm);
}

/** True where two diameters in one system are the same size, as far as text and number can differ. */
export function isSize(bolt: BoltSize, diameter: number): boolean {
  return Math.abs(bolt.diameterMm - diameter * mmPer[bolt.system]) < sameSizeMm;
}

/** The row of the bolt's diameter in a table of its own system; refused with the sizes the table has. */
export function boltRow<Row extends { diameter: number }>(
  bolt: BoltSize,
  rows: readonly Row[],
  table: string,
  andAbove = '',
): Row {
  const row = rows.find((each) => isSize(bolt, each.diameter));
  if (row) return row;
  const sizes = rows.map(({ diameter }) =>
    bolt.system === 'in' ? formatLength(diameter * mmPer.in, 'in') : `M${diameter}`,
  );
  const inches = bolt.system === 'in' ? ' (in)' : '';
  const list = `Allowed: ${sizes.join(', ')}${andAbove}${inches}.`;
  return refuseUnknown('Bolt', bolt.name, `${bolt.name} is not a size of ${table}.`, list);
}

/** Refuses a bolt of the system a code has no table for. */
export function requireSystem(bolt: BoltSize, system: LengthUnit, table: string): void {
  if (bolt.system === system) return;
  const allowedSizes =
    system === 'mm' ? 'Write a metric size such as M20.' : 'Write an inch size such as 3/4.';
  refuseUnknown('Bolt', bolt.name, `${bolt.name} is not a size of ${table}.`, allowedSizes);
}
