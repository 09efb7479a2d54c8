import { refuse, refuseUnknown } from '../inputError.js';
import { type CellValue, isBlank, quoted } from '../quantity/cellValue.js';
import { formatLength } from '../quantity/formatLength.js';
import { memo } from '../quantity/memo.js';
import { readLength, readLengthText } from '../quantity/readLength.js';
import { tradeText } from '../quantity/tradeText.js';
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

const remembered = memo<BoltSize>();
const longestText = 60;
const sameSizeMm = 0.02;
const examples: Record<LengthUnit, string> = {
  in: 'Write 3/4, 3/4" or M20.',
  mm: 'Write M20, 20 or 3/4 in.',
};

/** `M20`, `M 20x60`, `M20-8.8`, `20 mm`: the diameter, and what stands behind it. */
const metricBolt = /^m ?(\d+(?:[.,]\d+)*)(?: ?mm)?(?!\d|[.,]\d)(.*)$/;
/** `3/4" A325`, `3/4 x 2-1/4`, `1-1/8 dia`: the diameter, and what stands behind it. */
const inchBolt = /^((?:\d+[ -])?\d+\/\d+|[\d.,]+)( ?(?:mm|cm|inches|inch|in\.?|"))?(?![\d.,/])(.*)$/;
/** The usual spelling: `3/4`, `1-1/8"`. */
const plainFraction = /^(?:\d-)?\d{1,2}\/\d{1,2}"?$/;
/** The length of a bolt or the pitch of its thread. */
const boltLength = /^ ?x ?(?!0)(?:\d+[ -])?\d[\d.,]*(?:\/\d+)?(?: ?(?:mm|in|"))?(?: ?x ?\d+)?(?![\d.,/])/;
/** Threads to the inch. */
const threads = /^ ?- ?\d{1,2} ?(?:unc|unf|un)\b/;

/** Marks of grade, product and kind that say nothing of the diameter. Common practice, no source. */
export const boltMarks: readonly string[] = [
  ...[
    'a325',
    'a325n',
    'a325x',
    'a325sc',
    'a325m',
    'a490',
    'a490n',
    'a490x',
    'a490sc',
    'a307',
    'a449',
    'f1554',
  ],
  ...['f3125', 'f1852', 'f2280', 'f3148', 'sae', 'hs', 'hsb', 'mb', 'tc', 'n', 'x', 'sc', 'st'],
  ...['gr2', 'gr5', 'gr8', 'gra', 'grb', 'grc', 'gra325', 'gra490', 'gr1', 'gr3', 'gr4.6', 'gr8.8', 'gr10.9'],
  ...['4.6', '4.8', '5.6', '5.8', '6.8', '8.8', '10.9', '12.9', 'hv', 'hr', 'sb', 'hrc'],
  ...['dia', 'ø', 'bolt', 'bolts', 'hex', 'galv', 'hdg', 'tzn', 'fvz'],
  ...['schraube', 'schrauben', 'vis', 'boulon', 'boulons', 'tornillo', 'tornillos'],
];
const knownMarks = new Set(boltMarks);
/** `DIN 933`, `EN 14399-4`, `DIN EN ISO 4017`; a grade may follow: `DIN 933-8.8`. */
const standards = /\b(?:(?:din|iso|en) ?)+\d{3,5}(?:-\d{1,2}(?![\d.]))?/g;

/**
 * Reads a bolt size: a number in the shop's unit, `3/4`, `3/4"`, `M20`, `M 20`, `20 mm`, with grade and length behind
 * it where there are any (`3/4" A325`, `M20x60`, `M20-8.8`): they change nothing here. A fraction means inches in
 * every shop.
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
  if (isBlank(value)) return refuse(argument, '', 'the cell is blank.', examples[unit]);
  if (typeof value !== 'string')
    return boltSize(readLength(value, argument, unit, 'bolt'), unit, { argument, value });
  const notABolt = () => refuse(argument, value, `${quoted(value)} is not a bolt size.`, examples[unit]);
  if (value.length > longestText) return notABolt();
  return remembered(`${unit}|${argument}|${value}`, () => {
    if (plainFraction.test(value)) {
      return boltSize(readLengthText(value, argument, 'in', 'bolt'), 'in', { argument, value });
    }
    const text = tradeText(value).replace(/^(?:ø|dia\.?) ?/, '');
    const metric = metricBolt.exec(text);
    if (metric) {
      if (!isMarks(metric[2] ?? '')) return notABolt();
      return boltSize(readLengthText(`${metric[1]} mm`, argument, 'mm', 'bolt'), 'mm', { argument, value });
    }
    const [, size = '', mark = '', behind = ''] = inchBolt.exec(text) ?? [];
    if (size === '' || !isMarks(behind)) {
      refuseCount(text, value, argument);
      return notABolt();
    }
    const system = /mm|cm/.test(mark) ? 'mm' : mark !== '' || size.includes('/') ? 'in' : unit;
    return boltSize(readLengthText(size + mark, argument, system, 'bolt'), system, { argument, value });
  });
}

/** `4 x M20`, `(4) 3/4`: how many stands under another heading. */
function refuseCount(text: string, value: string, argument: string): void {
  const [, bracketed, count = bracketed, size] =
    /^(?:\((\d{1,3})\) ?|(\d{1,3}) ?(?:[x@-] ?)?(?=m ?\d))(.+)$/.exec(text) ?? [];
  if (size === undefined) return;
  const problem = `${quoted(value)} is a bolt size with a count.`;
  refuse(argument, value, problem, `Write ${size.toUpperCase()} here, and ${count} under Holes.`);
}

/** True where what stands behind the diameter says its length, threads, grade or kind. */
function isMarks(behind: string): boolean {
  if (behind === '') return true;
  const rest = behind.replace(threads, '').replace(boltLength, '');
  const marks = rest
    .replace(standards, '')
    .replace(/\b(?:grade|gr|type|class|kl|fk)\.? ?(?=[\dabc])/g, 'gr')
    .split(/[ ,/()-]+/)
    .map((mark) => mark.replace(/\.$/, ''))
    .filter((mark) => mark !== '');
  return marks.every((mark) => knownMarks.has(mark));
}

/** Sizes of ISO 261 that bolts are made in. */
const metricSizes = [
  ...[
    3, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 42, 45, 48, 52, 56, 60, 64, 68, 72,
  ],
  ...[76, 80, 85, 90, 95, 100],
];
const inchParts = 16;

/** Refuses a diameter no bolt has: a digit or a mark was lost. Inch bolts come in 16ths, from 1 in in 8ths. */
function requireSize(diameterMm: number, system: LengthUnit, argument: string, value: CellValue): void {
  const own = diameterMm / mmPer[system];
  const parts = own * inchParts;
  const isSize =
    system === 'mm'
      ? metricSizes.some((each) => Math.abs(each - own) < sameSizeMm)
      : Math.abs(parts - Math.round(parts)) < 0.01 && (own < 1 || Math.round(parts) % 2 === 0);
  if (isSize) return;
  const problem = `${system === 'in' ? `${formatLength(diameterMm, 'in')} in` : `M${formatLength(diameterMm, 'mm')}`} is no size of a bolt.`;
  refuse(argument, String(value), problem, examples[system]);
}

function boltSize(
  diameterMm: number,
  system: LengthUnit,
  { argument, value }: { argument: string; value: CellValue },
): BoltSize {
  requireSize(diameterMm, system, argument, value);
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
  const name = table.replace(' (from memory)', '');
  return refuseUnknown('Bolt', bolt.name, `${bolt.name} is not a size of ${name}.`, list);
}

/** Refuses a bolt of the system a code has no table for. */
export function requireSystem(bolt: BoltSize, system: LengthUnit, table: string): void {
  if (bolt.system === system) return;
  const allowedSizes =
    system === 'mm' ? 'Write a metric size such as M20.' : 'Write an inch size such as 3/4.';
  refuseUnknown('Bolt', bolt.name, `${bolt.name} is not a size of ${table}.`, allowedSizes);
}
