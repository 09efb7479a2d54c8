import { type CellValue, quoted } from './cellValue.js';
import { refuse } from '../inputError.js';
import { digitsValue, refuseBothReadings } from './readNumber.js';
import { tradeText } from './tradeText.js';
import { mmPerFoot, mmPerInch } from './units.js';

/** A length as text says it: in mm when the text carries its unit, else a bare number. */
export type WrittenLength = { mm: number; bare?: undefined } | { bare: number; mm?: undefined };

type UnitToken = { kind: 'unit'; text: string };
type Token = { kind: 'number' | 'fraction'; value: number } | UnitToken | { kind: 'dash'; text: string };

const longestText = 60;
const tokenPattern = /(\d+\/\d+)|(\d[\d.,]*|[.,]\d+)|(mm|cm|[m"']|inches|inch|in\.?|feet|foot|ft\.?)|(-)| /y;
const metricUnits: Record<string, number> = { mm: 1, cm: 10, m: 1000 };

const isFeet = (token: Token | undefined) => token?.kind === 'unit' && /^(?:'|f)/.test(token.text);
const isInches = (token: Token | undefined) => token?.kind === 'unit' && /^(?:"|in)/.test(token.text);
const isDash = (token: Token | undefined) => token?.kind === 'dash';

/** How a length may be written, for refusals. */
export const lengthExamples = 'Write 3/8, 9.5 mm or 0.375.';

/**
 * Reads a length in trade notation: `3/8`, `1-3/16`, `1 3/16"`, `2'-6 1/2"`, `1-0 3/8` (feet and inches),
 * `12 mm`, `0.375`. A number without a unit is returned bare: the caller knows the shop's unit.
 * Throws where the text is no length, or may be read two ways (`2-6`, `1,500`). Common practice, no source.
 */
export function lengthText(text: string, argument: string): WrittenLength {
  const received = text;
  const notALength = () => refuse(argument, received, `${quoted(received)} is not a length.`, lengthExamples);
  if (text.length > longestText) notALength();
  const tokens = tokenise(tradeText(text), argument, received) ?? notALength();
  const reader = new TokenReader(tokens);
  const first = reader.amount() ?? notALength();
  const unit = reader.unit();
  if (!unit) return bareOrFeetInches(reader, first, argument, received) ?? notALength();
  if (!isFeet(unit)) {
    if (!reader.atEnd) notALength();
    return { mm: first.value * (isInches(unit) ? mmPerInch : (metricUnits[unit.text] ?? Number.NaN)) };
  }
  const inches = reader.inches();
  if (!reader.atEnd || inches === undefined) notALength();
  return { mm: first.value * mmPerFoot + (inches ?? 0) * mmPerInch };
}

/** Without a unit after the first amount: the end, or `1-0 3/8` and `1-0-3/8`, feet and inches by custom. */
function bareOrFeetInches(
  reader: TokenReader,
  first: { value: number; whole: boolean },
  argument: string,
  received: CellValue,
): WrittenLength | undefined {
  if (reader.atEnd) return { bare: first.value };
  if (!first.whole || !reader.dash()) return undefined;
  const inches = reader.amount();
  if (!inches) return undefined;
  const marked = isInches(reader.unit());
  if (!reader.atEnd) return undefined;
  if (inches.whole && !marked) {
    return refuse(
      argument,
      String(received),
      `${quoted(received)} may be ${first.value} ft ${inches.value} in or a fraction cut short.`,
      `Write ${first.value}'-${inches.value}" or the whole fraction.`,
    );
  }
  return inches.value < 12 ? { mm: first.value * mmPerFoot + inches.value * mmPerInch } : undefined;
}

function tokenise(text: string, argument: string, received: string): Token[] | undefined {
  const tokens: Token[] = [];
  tokenPattern.lastIndex = 0;
  while (tokenPattern.lastIndex < text.length) {
    const match = tokenPattern.exec(text);
    if (!match) return undefined;
    const [, fraction, digits, unit, dash] = match;
    if (fraction) {
      const [over = 0, under = 0] = fraction.split('/').map(Number);
      if (under === 0) return undefined;
      tokens.push({ kind: 'fraction', value: over / under });
    } else if (digits) {
      const value = digitsValue(digits);
      if (value === 'ambiguous') refuseBothReadings(argument, received, digits);
      if (value === undefined) return undefined;
      tokens.push({ kind: 'number', value });
    } else if (unit) tokens.push({ kind: 'unit', text: unit });
    else if (dash) tokens.push({ kind: 'dash', text: dash });
  }
  return tokens;
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
  amount(): { value: number; whole: boolean } | undefined {
    const token = this.peek();
    if (token?.kind !== 'number' && token?.kind !== 'fraction') return undefined;
    this.at += 1;
    const whole = token.kind === 'number' && Number.isInteger(token.value);
    if (!whole) return { value: token.value, whole };
    const gap = isDash(this.peek()) ? 1 : 0;
    const fraction = this.peek(gap);
    if (fraction?.kind !== 'fraction') return { value: token.value, whole };
    this.at += gap + 1;
    return { value: token.value + fraction.value, whole: false };
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
  inches(): number | undefined {
    if (this.atEnd) return 0;
    this.dash();
    const amount = this.amount();
    if (!amount || amount.value >= 12) return undefined;
    const unit = this.unit();
    return unit && !isInches(unit) ? undefined : amount.value;
  }
}
