import { refuse } from '../inputError.js';
import { quoted } from './cellValue.js';
import { inchFraction } from './inchFraction.js';
import { digitsValue, pointBeforeThree, refuseBothReadings } from './readNumber.js';
import { tradeText } from './tradeText.js';
import { type LengthUnit, mmPerFoot, mmPerInch } from './units.js';
import { wordTable } from './wordTable.js';

/**
 * A length as text says it: in mm when the text carries its unit, else a bare number. A point before three digits may
 * part thousands where people work in mm: the value is then given with both readings.
 */
export type WrittenLength = ({ mm: number; bare?: undefined } | { bare: number; mm?: undefined }) & {
  /** The same text with its point parting thousands: of `6.000`, 6000. */
  asThousands?: number;
  /** A bare number without the zero before its point, which nobody leaves away in mm. */
  leadingPoint?: boolean;
  /** A bare number written as a fraction, which only inches are. */
  isFraction?: boolean;
};

type UnitToken = { kind: 'unit'; text: string };
type NumberToken = { kind: 'number' | 'fraction' | 'grouped'; value: number; text: string };
type Token = NumberToken | UnitToken | { kind: 'dash'; text: string };

const longestText = 60;
const tokenPattern =
  /(\d+\/\d+)|(\d{1,3}(?: \d{3})+(?![\d/.,]))|(\d[\d.,]*|\.\d+)|(mm|cm|[m"']|inches|inch|in\.?|feet|foot|ft\.?)|(-)| /y;
const metricUnits: Record<string, number> = wordTable({ mm: 1, cm: 10, m: 1000 });
/** A dash with a space on one side stands where something else was typed: `10- 3/8`. */
const loneSpaceAtDash = /\d- \d|\d -\d/;
/** `03`: a digit or a point was lost; only inches behind feet are written so. */
const leadingZero = /^0\d/;

const isFeet = (token: Token | undefined) => token?.kind === 'unit' && /^(?:'|f)/.test(token.text);
const isInches = (token: Token | undefined) => token?.kind === 'unit' && /^(?:"|in)/.test(token.text);
const isDash = (token: Token | undefined) => token?.kind === 'dash';

/** How a length may be written, for refusals, in the words of the shop. */
export function lengthExamples(unit: LengthUnit): string {
  return unit === 'in' ? 'Write 3/8, 9.5 mm or 0.375.' : 'Write 10, 9.5 or 3/8 in.';
}

/** What a text is the length of, for its refusals. */
export interface LengthSource {
  argument: string;
  /** The text as typed. */
  received: string;
  /** The shop's unit. */
  unit: LengthUnit;
}

/**
 * Reads a length in trade notation: `3/8`, `1-3/16`, `1 3/16"`, `2'-6 1/2"`, `1-0 3/8` (feet and inches),
 * `12 mm`, `0.375`, `6 000 mm`. A number without a unit is returned bare: the caller knows the shop's unit.
 * Throws where the text is no length, or may be read two ways (`2-6`, `1,500`, `11/2`). Common practice, no source.
 */
export function lengthText(text: string, argument: string, unit: LengthUnit): WrittenLength {
  const source: LengthSource = { argument, received: text, unit };
  if (text.length > longestText) notALength(source);
  const spelled = tradeText(text);
  if (spelled.includes(';') && !text.includes(';')) refuseTwoLines(source);
  if (loneSpaceAtDash.test(spelled)) notALength(source);
  const tokens = tokenize(spelled, source) ?? notALength(source);
  const reader = new TokenReader(tokens);
  const first = reader.amount() ?? notALength(source);
  if (leadingZero.test(first.token.text)) notALength(source);
  const written = reader.unit();
  if (!written) return bareOrFeetInches(reader, first, source) ?? notALength(source);
  if (!isFeet(written)) {
    if (!reader.atEnd) notALength(source);
    return inUnit(first, written, source);
  }
  // Feet are whole where inches follow, and no fraction of one is written.
  if (first.token.kind === 'grouped' || first.isFraction) notALength(source);
  if (!/^\d+$/.test(first.token.text) && !reader.atEnd) notALength(source);
  const inches = reader.inches(first.value, source);
  if (!reader.atEnd || inches === undefined) notALength(source);
  return { mm: first.value * mmPerFoot + (inches ?? 0) * mmPerInch };
}

/** `3` over `3/4` in one cell is hardly 3-3/4. */
function refuseTwoLines({ argument, received }: LengthSource): never {
  const problem = `${quoted(received)} stands on two lines, so it may be two lengths.`;
  return refuse(argument, received, problem, 'Write one length on one line.');
}

/** Words of a drawing behind a size. */
const wordBehind = /\d["')]* *(?<word>(?:ref|typ|std|nom|lg|long)\.?)$/iu;

function notALength({ argument, received, unit }: LengthSource): never {
  const { word } = wordBehind.exec(received.trim())?.groups ?? {};
  const problem =
    word === undefined
      ? `${quoted(received)} is not a length.`
      : `${quoted(received)} is more than a length: take ${quoted(word)} off.`;
  return refuse(argument, received, problem, lengthExamples(unit));
}

function inUnit(
  { value, token, isFraction }: Amount,
  written: UnitToken,
  source: LengthSource,
): WrittenLength {
  if (isInches(written)) return token.kind === 'grouped' ? notALength(source) : { mm: value * mmPerInch };
  if (isFraction) refuseMetricFraction(source);
  if (token.text.startsWith('.')) notALength(source);
  const factor = metricUnits[written.text] ?? Number.NaN;
  // Lengths in meters are written to the mm: 6.000 m has one reading.
  const thousands = written.text !== 'm' && pointBeforeThree.test(token.text);
  return { mm: value * factor, ...(thousands ? { asThousands: value * 1000 * factor } : {}) };
}

/** `3/8 mm`: a fraction says inches, its unit does not. */
function refuseMetricFraction({ argument, received }: LengthSource): never {
  const problem = `${quoted(received)} is a fraction of an inch with a metric unit.`;
  return refuse(argument, received, problem, 'Write the fraction in inches, or a decimal.');
}

/** Without a unit after the first amount: the end, or `1-0 3/8` and `1-0-3/8`, feet and inches by custom. */
function bareOrFeetInches(
  reader: TokenReader,
  first: Amount,
  source: LengthSource,
): WrittenLength | undefined {
  if (reader.atEnd) return bareLength(first, source);
  if (!first.whole || !reader.dash()) return undefined;
  const inches = reader.amount();
  const marked = reader.unit();
  if (!inches || !reader.atEnd || (marked && !isInches(marked))) return undefined;
  if (inches.whole && !marked) {
    const { argument, received } = source;
    return refuse(
      argument,
      received,
      `${quoted(received)} may be ${first.value} ft ${inches.value} in or an unfinished fraction.`,
      `Write ${first.value}'-${inches.value}" or the whole fraction.`,
    );
  }
  return inches.value < 12 ? { mm: first.value * mmPerFoot + inches.value * mmPerInch } : undefined;
}

function bareLength({ value, token, isFraction }: Amount, { unit }: LengthSource): WrittenLength | undefined {
  if (token.kind === 'grouped' && unit === 'in') return undefined;
  const thousands = unit === 'mm' && pointBeforeThree.test(token.text);
  return {
    bare: value,
    ...(isFraction ? { isFraction } : {}),
    ...(token.text.startsWith('.') ? { leadingPoint: true } : {}),
    ...(thousands ? { asThousands: value * 1000 } : {}),
  };
}

function tokenize(text: string, source: LengthSource): Token[] | undefined {
  const tokens: Token[] = [];
  tokenPattern.lastIndex = 0;
  while (tokenPattern.lastIndex < text.length) {
    const match = tokenPattern.exec(text);
    if (!match) return undefined;
    const [, fraction, grouped, digits, unit, dash] = match;
    if (fraction) tokens.push({ kind: 'fraction', value: inchFraction(fraction, source), text: fraction });
    else if (grouped)
      tokens.push({ kind: 'grouped', value: Number(grouped.replaceAll(' ', '')), text: grouped });
    else if (digits) {
      const value = digitsValue(digits);
      if (value === 'ambiguous') refuseBothReadings(source.argument, source.received, digits);
      if (value === undefined) return undefined;
      tokens.push({ kind: 'number', value, text: digits });
    } else if (unit) tokens.push({ kind: 'unit', text: unit });
    else if (dash) tokens.push({ kind: 'dash', text: dash });
  }
  return tokens;
}

interface Amount {
  value: number;
  whole: boolean;
  isFraction: boolean;
  /** The first token of the amount. */
  token: NumberToken;
}

class TokenReader {
  private at = 0;

  constructor(private readonly tokens: Token[]) {}

  get atEnd(): boolean {
    return this.at >= this.tokens.length;
  }

  private peek(ahead = 0): Token | undefined {
    return this.tokens[this.at + ahead];
  }

  /** A number, a fraction, or a whole number with a fraction (`1 3/16`, `1-3/16`). */
  amount(): Amount | undefined {
    const token = this.peek();
    if (token === undefined || token.kind === 'unit' || token.kind === 'dash') return undefined;
    this.at += 1;
    const { value } = token;
    const whole = token.kind === 'number' && Number.isInteger(value);
    const gap = isDash(this.peek()) ? 1 : 0;
    const fraction = whole ? this.peek(gap) : undefined;
    if (fraction?.kind !== 'fraction') return { value, whole, isFraction: token.kind === 'fraction', token };
    this.at += gap + 1;
    return { value: value + fraction.value, whole: false, isFraction: true, token };
  }

  unit(): UnitToken | undefined {
    const token = this.peek();
    if (token?.kind !== 'unit') return undefined;
    this.at += 1;
    return token;
  }

  dash(): boolean {
    if (!isDash(this.peek())) return false;
    this.at += 1;
    return true;
  }

  /** What follows feet: nothing (0), or inches up to 12 with or without a dash and a mark. */
  inches(feet: number, source: LengthSource): number | undefined {
    if (this.atEnd) return 0;
    const dashed = this.dash();
    const amount = this.amount();
    if (!amount || /^\./.test(amount.token.text)) return undefined;
    const unit = this.unit();
    if (unit && !isInches(unit)) return undefined;
    if (!dashed && !unit && /^\d{3}$/.test(amount.token.text))
      refuseThousands(feet, amount.token.text, source);
    return amount.value < 12 ? amount.value : undefined;
  }
}

/** `1'000`: an apostrophe may part thousands. */
function refuseThousands(feet: number, digits: string, { argument, received }: LengthSource): never {
  const problem = `${quoted(received)} may be ${feet}${digits} or ${feet} ft and ${digits} in.`;
  return refuse(argument, received, problem, `Write ${feet}${digits}, or feet and inches as ${feet}'-6".`);
}
