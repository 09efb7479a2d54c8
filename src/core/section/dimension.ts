import { InputError, refuse } from '../inputError.js';
import { allowedRange } from '../quantity/allowedRange.js';
import { quoted } from '../quantity/cellValue.js';
import { formatLength } from '../quantity/formatLength.js';
import { type LengthKind, lengthKinds } from '../quantity/lengthKind.js';
import { lengthText, type WrittenLength } from '../quantity/lengthText.js';
import { type LengthUnit, mmPer, mmPerInch } from '../quantity/units.js';

/** Where a section text came from and how its bare numbers are to be read. */
export interface SectionSource {
  /** The whole text as typed. */
  text: string;
  argument: string;
  /** The shop's unit. */
  unit: LengthUnit;
}

/** The dimensions of a section, and the unit its bare numbers were read in. */
export interface Dimensions {
  valuesMm: number[];
  unit: LengthUnit;
  /** True where the text itself says the unit. */
  unitWritten: boolean;
  lengthMm?: number;
}

/** How sections may be written, for refusals, in the words of the shop. */
export function sectionExamples(unit: LengthUnit): string {
  return unit === 'in'
    ? 'Write PL1/2X6, FB 10x50, L3X3X1/4, L80x80x8, C8X11.5, UPN100, RB 1 or SQ 3/4.'
    : 'Write FL 100x10, BL 15x200, L80x80x8, L3X3X1/4, UPN100, C8X11.5, RD 20 or VKT 20.';
}

const bars: Omit<LengthKind, 'fractionProne'> = { leastMm: mmPerInch / 8, greatestMm: 12 * mmPerInch };

/**
 * What the dimensions of sections can be, in mm: a reading outside is a mistake in the unit. Common practice, no
 * source.
 */
export const sectionKinds = {
  thickness: { ...lengthKinds.thickness, word: 'thick' },
  plateWidth: { leastMm: (3 / 8) * mmPerInch, greatestMm: lengthKinds.width.greatestMm, word: 'wide' },
  barWidth: { leastMm: (3 / 8) * mmPerInch, greatestMm: 24 * mmPerInch, word: 'wide' },
  leg: { ...lengthKinds.leg, leastMm: (3 / 8) * mmPerInch, word: 'of leg' },
  bar: { ...bars, word: 'thick' },
  tube: { leastMm: (3 / 8) * mmPerInch, greatestMm: 40 * mmPerInch, word: 'over the outside of a tube' },
} as const;

export type SectionKindName = keyof typeof sectionKinds;

export function notASection(source: SectionSource): never {
  return refuse(
    source.argument,
    source.text,
    `${quoted(source.text)} is not a section.`,
    sectionExamples(source.unit),
  );
}

const hasMetricMark = (part: string) => /\d ?(?:mm|cm|m)$/.test(part);
const hasInchMark = (part: string) => /["'/]|\d ?(?:in\b|inch|ft\b|feet|foot)/.test(part);
const marksCrossSection = (part: string) => /(?:mm|cm|"|in\.?|inch|inches)$/.test(part) && !/['f]/.test(part);

/**
 * Reads the parts between the `x`: `count` of cross-section, then a length if one more follows. A unit in the
 * text holds for all of it, fractions and inch marks mean inches, and a bare number is in the shop's unit.
 */
export function readDimensions(parts: string[], count: number, source: SectionSource): Dimensions {
  if (parts.length < count || parts.length > count + 1 || parts.includes('')) return notASection(source);
  const trailing = parts[count];
  const written = writtenUnit(parts.slice(0, count), trailing, source);
  const unit = written ?? source.unit;
  const mm = (part: string) => inMm(lengthIn(part, source), unit);
  const read = { valuesMm: parts.slice(0, count).map(mm), unit, unitWritten: written !== undefined };
  if (trailing === undefined) return read;
  return { ...read, lengthMm: trailingLength(mm(trailing), source) };
}

function writtenUnit(
  cross: string[],
  trailing: string | undefined,
  source: SectionSource,
): LengthUnit | undefined {
  const metric = cross.some(hasMetricMark);
  const inch = cross.some(hasInchMark);
  if (metric && inch) {
    const fix = 'Write all its dimensions in one unit.';
    return refuse(source.argument, source.text, `${quoted(source.text)} mixes inches and mm.`, fix);
  }
  if (metric) return 'mm';
  if (inch) return 'in';
  return trailing === undefined ? undefined : trailingUnit(trailing, source);
}

/** A unit behind the length alone: it holds for the section too where it can be one of sections. */
function trailingUnit(trailing: string, source: SectionSource): LengthUnit | undefined {
  if (!hasMetricMark(trailing) && !hasInchMark(trailing)) return undefined;
  const unit = hasMetricMark(trailing) ? 'mm' : 'in';
  if (unit === source.unit || marksCrossSection(trailing)) return unit;
  return refuse(
    source.argument,
    source.text,
    `the length of ${quoted(source.text)} has a unit, its section has none.`,
    'Write the unit behind the dimensions of the section too.',
  );
}

/** A dimension by itself; what is wrong with it is told with the whole text, as typed. */
function lengthIn(part: string, source: SectionSource): WrittenLength {
  try {
    return lengthText(asTyped(part, source), source.argument, source.unit);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const { problem, allowed } = error.failure;
    const fix = problem.endsWith('is not a length.') ? sectionExamples(source.unit) : allowed;
    return refuse(source.argument, source.text, `${quoted(source.text)} is not a section: ${problem}`, fix);
  }
}

/** A part of the text in the capitals it was typed in, where it stands there so. */
function asTyped(part: string, { text }: SectionSource): string {
  const at = text.toLowerCase().indexOf(part);
  return at < 0 ? part : text.slice(at, at + part.length);
}

function inMm(written: WrittenLength, unit: LengthUnit): number {
  return written.bare === undefined ? written.mm : written.bare * mmPer[unit];
}

/** Shorter pieces are no length behind a section, but a size of it that slipped. */
export const leastTrailingMm = mmPerInch / 2;

/** A length behind a section, held to what a bar can be. */
export function trailingLength(mm: number, source: SectionSource): number {
  const { greatestMm } = lengthKinds.length;
  const leastMm = leastTrailingMm;
  if (mm >= leastMm && mm <= greatestMm) return mm;
  const problem = `the length of ${quoted(source.text)} is out of range.`;
  return refuse(source.argument, source.text, problem, allowedRange({ leastMm, greatestMm }, source.unit));
}

/** A trailing length read by itself, in its own unit or the shop's. */
export function readTrailingLength(part: string, source: SectionSource): number {
  return trailingLength(inMm(lengthIn(part, source), source.unit), source);
}

/** The text with a unit behind its last number: `1 in SQ BAR`, `L80x80x8 mm`. */
function withUnit(text: string, unit: string): string {
  return text.replace(/(\d)(\D*)$/, `$1 ${unit}$2`);
}

/** Refuses a dimension no section has: most often a number in the other unit. */
export function requireBelievable(
  mm: number,
  kindName: SectionKindName,
  { unit, unitWritten }: Dimensions,
  source: SectionSource,
): void {
  const kind = sectionKinds[kindName];
  if (mm >= kind.leastMm && mm <= kind.greatestMm) return;
  const number = formatLength(mm, unit);
  const [read, other] = unit === 'in' ? ['inches', 'mm'] : ['mm', 'in'];
  const range = allowedRange(kind, unit);
  const problem = `${number} would be ${number} ${read} ${kind.word}.`;
  if (unitWritten || mm <= 0) return refuse(source.argument, source.text, problem, range);
  const inUnit = `${range} Write "${withUnit(source.text.slice(0, 40).trim(), other)}"`;
  const fix = `${inUnit}, or add the shop cell or "${other}".`;
  return refuse(source.argument, source.text, problem, fix, `${inUnit}.`);
}
