import { refuse } from '../../inputError.js';
import { quoted } from '../../quantity/cellValue.js';
import { tradeText } from '../../quantity/tradeText.js';
import type { LengthUnit } from '../../quantity/units.js';
import { anyLine, type HoleLines } from './holeLines.js';

export interface PitchContext {
  argument: string;
  unit: LengthUnit;
  length: (text: string) => number;
  lines: HoleLines;
  /** The least that two holes must be apart not to lie in each other. */
  leastApartMm: number;
}

/** The cell as it is told, and how it is read. */
export interface TypedPitch extends PitchContext {
  typed: string;
}

/** `4x120`, `4 à 120`: spaces and their size. */
const times = /(?<![\d/.,-] ?)(\d{1,3}) ?[xàá] ?(?=\d)/g;
const timesAlone = /^(\d{1,3}) ?x ?(\d{1,3})$/;
/** `100-120-150` and `100/120/150`; two of them with a dash only, for `100/120` may be anything. */
const dashed = /^\d+(?:[.,]\d+)?(?: ?- ?\d+(?:[.,]\d+)?)+$|^\d+(?:[.,]\d+)?(?: ?\/ ?\d+(?:[.,]\d+)?){2,}$/;

/** The text with `@` behind each number of spaces, and `;` between the spaces of a chain with dashes. */
export function pitchText(context: TypedPitch): string {
  const { typed } = context;
  const text = /[a-z]/i.test(typed) ? withoutMarks(typed) : typed;
  const plain = tradeText(text.replaceAll('\n', ';'));
  refuseTimes(plain, context);
  if (context.unit === 'mm' && dashed.test(plain)) {
    const spaces = plain.split(/ ?[-/] ?/);
    const apart = spaces.every((each) => context.length(each) > context.leastApartMm);
    if (apart) return spaces.join('; ');
  }
  return /[xàá]/.test(plain) ? plain.replace(times, '$1@') : text;
}

/** `3x4` with four holes: three spaces of 4, or four holes 3 apart. */
function refuseTimes(plain: string, { argument, lines, length, leastApartMm, typed }: TypedPitch): void {
  const [, first = '', second = ''] = timesAlone.exec(plain) ?? [];
  if (lines === anyLine || first === '' || first === second || !lines.fits(Number(first))) return;
  const holes = Number(second);
  if (!(lines.fits(holes) || lines.fits(holes - 1)) || length(first) <= leastApartMm) return;
  const problem = `${quoted(typed)} may be ${first} spaces of ${second} or ${second} holes ${first} apart.`;
  refuse(argument, typed, problem, `Write ${first}@${second}, or ${first}.`);
}

/** Without the marks that say no more than that it is a distance of centers: `3 TYP`, `3 o.c.`, `3" C/C`. */
export function withoutMarks(text: string): string {
  return text
    .replace(/(?<![a-z])(?:typ(?:ical|\.)?|o\.c\.|o\/?c|c\/c|c-c|ctrs?\.?|centers|centres)(?![a-z])/gi, ' ')
    .replace(/ {2,}/g, ' ')
    .trim();
}
