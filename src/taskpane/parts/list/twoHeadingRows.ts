import { isBlank, plainText, type CellValue } from '../../../core/quantity/cellValue.js';
import { namedByUnread } from '../../../core/row/headings/unreadWork.js';
import { readSection } from '../../../core/section/readSection.js';
import { InputError } from '../../../core/inputError.js';
import { isUnitsRow } from './unitsRow.js';
import { fieldOf } from './columnMatch.js';
import { usualHeading } from './usualHeadings.js';

type Row = readonly CellValue[];

/** Headings in two rows, `Hole` over `Dia`, `Qty`, `Edge`: the lower row, and what both say together. */
export interface TwoHeadingRows {
  /** The lower row, from 0. */
  lower: number;
  headings: string[];
}

/** Symbols of codes stand for themselves: `n`, `e1`. */
const longestSymbol = 2;
const meaningOf = (text: string) => fieldOf(text) ?? usualHeading(text);
const isKnown = (text: string) => meaningOf(text) !== undefined;
const textOf = (cell: CellValue | undefined) => (isBlank(cell) ? '' : plainText(String(cell)));
/** How many things some headings say: `Qty` of the part and `Qty` of its holes are one until a row above parts them. */
const knownOf = (texts: readonly string[]) => new Set(texts.flatMap((text) => meaningOf(text) ?? [])).size;

/**
 * The two rows of headings about a row that holds some; undefined where it stands alone. Two rows are taken for
 * headings where together they say more than either.
 */
export function twoHeadingRows(rows: readonly Row[], row: number): TwoHeadingRows | undefined {
  const pairs = [
    [row, row + 1],
    [row - 1, row],
  ] as const;
  for (const [upper, lower] of pairs) {
    const [over, under] = [rows[upper], rows[lower]];
    if (!over || !under || lower + 1 >= rows.length || !isHeadingRow(under) || !isHeadingRow(over)) continue;
    // Units below the headings are read with them and stay a row of their own.
    if (isUnitsRow(under)) continue;
    const headings = combined(over, under);
    const [above, below] = [over.map(textOf), under.map(textOf)];
    const alone = Math.max(knownOf(above), knownOf(below));
    if (knownOf(headings) > alone && repeats(below, headings)) return { lower, headings };
    if (knownOf(below) > knownOf(above) && namesWork(above, below, headings)) return { lower, headings };
  }
  return undefined;
}

/** `Bevel` right over `Deep`: only together they say that the column, which is not read, holds work. A title stands at the left. */
function namesWork(above: readonly string[], below: readonly string[], headings: readonly string[]): boolean {
  const left = below.findIndex((text) => text !== '');
  return headings.some((heading, at) => {
    const isBoth = at > left && above[at] !== '' && below[at] !== '' && !isKnown(heading);
    return isBoth && saysWork(heading) && !saysWork(below[at] ?? '');
  });
}

function saysWork(heading: string): boolean {
  const names = namedByUnread(heading);
  return names === 'work' || names === 'shape';
}

/** Headings are words: a row with a number or a section in it is one of parts. */
function isHeadingRow(row: Row): boolean {
  return row.every(
    (cell) => isBlank(cell) || (typeof cell === 'string' && !/^\d/.test(cell) && !isSection(cell)),
  );
}

/** True where a heading of the lower row needs what stands over it, or one stands in the upper row alone. */
function repeats(under: readonly string[], headings: readonly string[]): boolean {
  return headings.some((heading, at) => heading !== under[at] && isKnown(heading));
}

/** What stands over a column holds to the right, as merged cells do, while the lower row goes on. */
function combined(over: Row, under: Row): string[] {
  let group = '';
  return under.map((cell, at) => {
    const [own, above] = [textOf(cell), textOf(over[at])];
    if (above !== '') group = above;
    else if (own === '') group = '';
    if (own === '') return above;
    return group === '' ? own : together(group, own);
  });
}

/** Symbols below `Hole` or `Bohrung` are those of codes. */
const isHoles = (group: string) => ['Hole', 'Holes'].includes(meaningOf(group) ?? '');

/** What is of the whole part, whatever stands over it. */
const ofPart =
  /^(?:weight|wt\.?|mass|area|paint|price|cost|rate|total|remarks?|notes?|comments?|date|status|gewicht|masse|preis|bemerkung(?:en)?|anmerkung(?:en)?|datum)(?!\p{L})/iu;

/** `Hole` and `Dia`; `Hole 2` and `Edge`: `Edge 2`. What the lower row says by itself is kept. */
function together(group: string, own: string): string {
  const [, name = group, number = ''] = /^(.+?) ?([1-9])$/.exec(group) ?? [];
  const behind = number === '' ? '' : ` ${number}`;
  const both = `${name} ${own}${behind}`;
  if (isKnown(both)) return both;
  // `L` and `W` below `Cope` are no length and width of the part.
  if (own.length <= longestSymbol && !isHoles(name) && namedByUnread(name) === 'work') return both;
  return isKnown(`${own}${behind}`)
    ? `${own}${behind}`
    : isKnown(own) || own.length <= longestSymbol || ofPart.test(own)
      ? own
      : `${group} ${own}`;
}

function isSection(text: string): boolean {
  try {
    readSection(text, 'Section', 'in');
    return true;
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}
