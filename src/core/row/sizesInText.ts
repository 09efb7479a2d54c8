import { ifRead } from '../inputError.js';
import { type CellValue, meant } from '../quantity/cellValue.js';
import { readLength } from '../quantity/readLength.js';
import { tradeText } from '../quantity/tradeText.js';
import { type LengthUnit, mmPer } from '../quantity/units.js';
import { leastDimensionMm } from '../tooling/hole.js';
import { type Column, type Headings } from './headings/readHeadings.js';
import { headingUnits } from './headings/headingUnits.js';
import type { RowJob } from './job/rowJob.js';

/** A number in a text in mm, in both units where it has none of its own; of `1,500 mm`, which may be two, none. */
interface NumberInText {
  mm: readonly number[];
  /** It is that of a bolt, `M20`: the next sizes are other bolts. */
  isOfBolt?: boolean;
  /** It can only be a size: it has a unit, a fraction, or a sign before it: of a diameter, `x`, `t=`. */
  isSize: boolean;
}

const amount = String.raw`(?:\d+[ -])?\d+/(?:[248]|16|32|64)(?![\d/])|\d+(?:[.,]\d+)?|\.\d+`;
const feetAndInches = String.raw`(?<![\d/.,])(?<feet>\d+ ?'(?: ?-? ?(?:${amount}))? ?"?)`;
const sign = String.raw`(?:(?<sign>(?:ø|(?<=\d ?)x|(?<!\p{L})[bdhlrtw] ?=|(?<![\p{L}\d])m(?=\d+(?: ?x ?\d+)? (?:bolts?|studs?|screws?)(?!\p{L}))) ?)|(?<![\d/.,]))`;
const withUnit = String.raw`(?<bare>${amount})(?<own> ?(?:"|(?:mm|cm|in|inch|inches)(?!\p{L})))?`;
const numbers = new RegExp(String.raw`(?:${feetAndInches}|${sign}${withUnit})(?![/']|\.\d)`, 'gu');
/** What a number behind it counts or names: a height in the building, a sheet, a load of a truck. */
const places = 'el|elev\\p{L}*|grid|line|level|load|truck|sheet|page|lot|phase|seq\\p{L}*|area|details?|date';
const isPlace = new RegExp(
  String.raw`(?<!\p{L})(?:${places}|t\.?o\.?s|b\.?o\.?s|gl|lvl|floor|bay|trip|sht|pg|rev|zone|det|dtl|section|sect|dwg|ref|due|week|wk|blatt|achse|ebene|geschoss|plan|zeichnung|lieferung|kw)[.:#@ +=-]*$`,
  'u',
);
/** Headings below which numbers name places, days and other things. */
export const isAboutPlace = new RegExp(
  String.raw`(?<!\p{L})(?:${places}|locations?|weld\p{L}*|paint|no|number|bolts?)(?!\p{L})`,
  'iu',
);
/** Welds, joints and paint have sizes of their own. */
const otherThing = 'fillet|fw|weld(?:s|ed)?|cjp|pjp|throat|gap|grout|mils?';
const isOther = new RegExp(String.raw`^ *(?:(?:cont\p{L}*|seal|stitch)\.? )?(?:${otherThing})(?!\p{L})`, 'u');
const isBehindOther = new RegExp(String.raw`(?<!\p{L})(?:${otherThing})[.:@ ]*$`, 'u');
/** Only a length in feet is that of the bars it is cut from: `use 1/2 stock` is a thickness. */
const isOfBar = /^ *(?:stock|stk|bars?)(?!\p{L})/u;
const isBehindBar = /(?<!\p{L})(?:stock|stk|bars?)[.:@ ]*$/u;
/** What the part is joined to: `weld to W12x26`. */
const isJoined =
  /(?<!\p{L})(?:weld|bolt|attach|connect|conn|fasten)\p{L}*\.? (?:to|onto|against) (?:\p{L}+ )?\p{L}{0,4}[\d/ -]*(?:x[\d/ -]+)*$/u;
/** The length of a bolt is no size of the part. */
const isOfBolt =
  /^ *(?:lg\.? |long )?(?:a ?(?:325|490|307)|grade|gr|bolts?|studs?|screws?|hsb)(?![\p{L}\d])/u;
const longestBefore = 40;
const longestText = 300;
/** As far apart as two people write the same size. */
const sameMm = 0.4;
const sameBoltMm = 0.1;
/** What holes are larger than their bolts by, common practice, no source. */
const clearancesMm = [1.5875, 3.175, 1, 2, 3];

function numbersIn(typed: string, unit: LengthUnit): NumberInText[] {
  const text = tradeText(typed.slice(0, longestText));
  return [...text.matchAll(numbers)].flatMap((match) => {
    const { feet, sign = '', bare = '', own } = match.groups ?? {};
    const before = text.slice(Math.max(0, match.index - longestBefore), match.index);
    const after = text.slice(match.index + match[0].length);
    const isNone =
      isPlace.test(before) || isBehindOther.test(before) || isJoined.test(before) || isOther.test(after);
    const isBar = feet !== undefined && (isOfBar.test(after) || isBehindBar.test(before));
    if (isNone || isBar || (sign !== '' && sign !== 'm' && isOfBolt.test(after))) return [];
    const units =
      own === undefined ? (bare.includes('/') ? [' in'] : sign === 'm' ? [' mm'] : [' mm', ' in']) : [own];
    const written = feet === undefined ? units.map((each) => `${bare}${each}`) : [feet];
    const mm = written.flatMap((each) => lengthOf(each, unit) ?? []);
    const isSize = feet !== undefined || own !== undefined || bare.includes('/') || sign !== '';
    return mm.length === 0 && !isSize ? [] : [{ mm, isSize, isOfBolt: sign === 'm' }];
  });
}

function lengthOf(text: string, unit: LengthUnit): number | undefined {
  return ifRead(() => readLength(text, 'Size', unit));
}

/**
 * Whether a text beside a part gives a size that no cell of the part gives: `6'-0 long`, `1/2 PL`, `Ø1-1/4 for pin`. A height
 * in the building, a date, the number of a sheet and the size of a weld are none of the part. Common practice, no source.
 */
export function givesOtherSize(text: string, given: () => readonly number[], unit: LengthUnit): boolean {
  if (!/\d/.test(text)) return false;
  // What stands behind is not looked at.
  if (text.length > longestText) return true;
  const sizes = numbersIn(text, unit).filter(({ isSize }) => isSize);
  return sizes.some(({ mm, isOfBolt }) => !isAmong(mm, given(), isOfBolt ? sameBoltMm : sameMm));
}

const counts =
  /(?:(?:qty|quantity|make|req'?d?)[.:=]? ?(\d+)|(?<![\p{L}\d/.,-])(?<!of )(\d+)\)? ?(?:req'?d|required|pcs|pieces|thus|assys|sets))(?![\p{L}\d/"'.-]| of )/gu;

/** Whether a text beside a part gives a count that its quantity does not: `8 req'd`, `qty 8`. Common practice, no source. */
export function givesOtherCount(text: string, qty: number): boolean {
  const found = tradeText(text.slice(0, longestText)).matchAll(counts);
  return [...found].some(([, before, behind]) => Number(before ?? behind) !== qty);
}

/** Whether a cell below a heading of sizes gives one that no cell of the part gives. */
export function isOtherSize(
  cell: CellValue,
  heading: Pick<Column, 'unit'>,
  given: () => readonly number[],
  unit: LengthUnit,
): boolean {
  return sizesIn(cell, heading, unit).some((mm) => !isAmong(mm, given()));
}

/** The sizes of a cell, each in the units that it may be in. */
function sizesIn(
  cell: CellValue,
  { unit: stated }: Pick<Column, 'unit'>,
  unit: LengthUnit,
): (readonly number[])[] {
  if (typeof cell === 'string') return numbersIn(cell, unit).map(({ mm }) => mm);
  if (typeof cell !== 'number') return [];
  const inFeet = stated === 'ft' ? lengthOf(`${cell} ft`, unit) : undefined;
  return [inFeet === undefined ? [cell, cell * mmPer.in] : [inFeet]];
}

const isAmong = (sizes: readonly number[], given: readonly number[], apartMm = sameMm) =>
  sizes.some((size) => given.some((each) => Math.abs(each - size) < apartMm));

/** Every size that the cells of a part may give, in mm; a bare number in both units. */
export function sizesGiven(
  cells: readonly CellValue[],
  { fields, groups }: Headings,
  { lengthMm, groups: holes }: RowJob,
): number[] {
  const columns = [fields, ...groups].flatMap((each) =>
    Object.entries(each).flatMap(([field, column]: [string, Column]) =>
      isOfSizes(field) ? (column.of ?? column) : [],
    ),
  );
  const ofCells = columns.flatMap((column) => sizesIn(meant(cells[column.at]), column, 'mm').flat());
  const ofBolts = holes.flatMap(({ hole }) => clearancesMm.map((each) => leastDimensionMm(hole) - each));
  return [...ofCells, ...ofBolts, ...(lengthMm === undefined ? [] : [lengthMm])];
}

function isOfSizes(field: string): boolean {
  const unit = headingUnits[field as keyof typeof headingUnits];
  return unit !== undefined && !/count|degrees/.test(unit);
}
