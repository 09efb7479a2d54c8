import { ifRead } from '../inputError.js';
import { type CellValue, meant } from '../quantity/cellValue.js';
import { readCount } from '../quantity/readCount.js';
import { readLength } from '../quantity/readLength.js';
import { readAnySection } from '../section/readAnySection.js';
import { nameKey } from '../shop/table.js';
import { groupFields } from './headings/heading.js';
import { type Column, headingNames, type Headings } from './headings/readHeadings.js';
import { rowCells } from './headings/joinedColumns.js';
import { isOwnHeading } from './rowItem.js';
import { strayWork } from './strayWork.js';

/** What a row that is not checked holds: it is no part. */
export type OtherRow = 'total' | 'title' | 'headings' | 'units' | 'work' | 'note';

/** A row of a list: a part, nothing at all, or what lists hold beside parts. */
export type RowKind = 'part' | 'blank' | OtherRow;

const totalWords =
  /^\s*(?:(?:sub-?|grand |page )?totals?|sum|(?:zwischen)?summe|gesamt\w*|(?:sub)?totaal|somme|suma)(?![\p{L}\d])/iu;
const unitWord = /^[([]? ?(?:mm|cm|[m°"'″′]|in|inch|inches|ft|feet|lbs?|kg|ea|pcs?|no|deg)\.? ?[)\]]?$/i;
/** Whether a text says a unit and nothing else: `(in)`, `mm`. */
export const isUnitWord = (text: string): boolean => unitWord.test(text.trim());

/** A size: no title has one. */
const size = /\d ?[x×*/"'″′]|\d[-.,]\d/i;
const singleWord = /^\p{L}{4,}[:.]?$/u;
/** What a row of totals may give beside its word. */
const summed = new Set(['drawing', 'revision', 'qty', 'length', 'feet', 'inches', 'holes']);

/**
 * What a row is. Nothing that could be a part is taken for something else: a title is one text alone, without a size, in
 * words that no mark and no section is; a total has no grade and no work, and its word names no part; a row of headings or
 * units holds nothing beside them. What says work that belongs to the part of another row is `work`, and no title. What
 * stands left and right of all that is read makes no difference beside it: the check of a row is not given it.
 */
export function rowKindOf(given: readonly CellValue[], headings: Headings): RowKind {
  return readKind(given, headings).is;
}

/** What a row is, and of one that says work without a part what it says. */
export function readKind(given: readonly CellValue[], headings: Headings): { is: RowKind; work?: string } {
  const is = (kind: RowKind) => ({ is: kind });
  const cells = rowCells(given, headings);
  const at = (column: Column | undefined) => meant(cells[column?.at ?? -1]);
  const { fields, groups } = headings;
  const section = at(fields.section);
  if (section !== null && at(fields.grade) !== null && /\d/.test(String(section))) return is('part');
  const read = [fields, ...groups].flatMap((each) => Object.entries(each));
  const filled = read.filter(([, column]) => at(column) !== null);
  const { first, last } = headings.span;
  const own = ownCells(cells, headings);
  if (own.length === 0) return is('blank');
  const texts = filled.length === 0 ? own : ownCells(cells, headings, first, last);
  const words = texts.filter((cell) => typeof cell === 'string');
  const total = words.find((cell) => totalWords.test(cell));
  // Beside a mark, the word is a remark on the part.
  const isSummed = ([field, column]: [string, Column]) =>
    at(column) === total || (field === 'mark' ? section === total : summed.has(field));
  if (
    filled.length > 0 &&
    total !== undefined &&
    (section === null || section === total) &&
    filled.every(isSummed)
  )
    return is('total');
  const columns = filled.map(([field]) => field);
  const isWords = filled.length > 0 && words.length === texts.length;
  if (isWords && words.every(isUnitWord) && columns.some((field) => field !== 'mark')) return is('units');
  const typed = filled.map(([, column]) => [column.heading, String(at(column))] as const);
  if (isWords && repeatsHeadings(words, typed)) return is('headings');
  const work = strayWork(cells, headings, words);
  if (work !== undefined) return { is: 'work', work };
  if (filled.length === 0) return is('note');
  return is(isWords && words.length === 1 && isTitle(words[0] ?? '', columns) ? 'title' : 'part');
}

/** A row of the sheet, from 1, that is no part. */
export interface OtherRowAt {
  row: number;
  is: OtherRow;
}

/** The rows that are no parts, of which the first stands in a row of the sheet, from 1. */
export function otherRowsOf(
  rows: readonly (readonly CellValue[])[],
  headings: Headings,
  firstRow: number,
): OtherRowAt[] {
  return rows.flatMap((cells, at) => {
    const is = rowKindOf(cells, headings);
    return is === 'part' || is === 'blank' ? [] : [{ row: firstRow + at, is }];
  });
}

/** What stands in columns of a row, the check columns left out. */
function ownCells(
  cells: readonly CellValue[],
  { unread }: Headings,
  first = 0,
  last = Infinity,
): CellValue[] {
  const own = new Set(unread.flatMap(({ at, heading }) => (isOwnHeading(heading) ? at : [])));
  return cells.filter((cell, at) => at >= first && at <= last && meant(cell) !== null && !own.has(at));
}

/** No title stands below a heading of holes: `two slots each end` goes on with the part above. */
const ofHoles: ReadonlySet<string> = new Set(groupFields.map(({ key }) => key));

/** `CATWALK LEVEL 2`, `Handrail`; not `P12`, `BA`, which name a piece, not `PIPE 2 STD`, a section, nor `3 feet`. */
function isTitle(text: string, columns: readonly string[]): boolean {
  const plain = text.trim();
  if (columns.some((field) => ofHoles.has(field))) return false;
  if (size.test(plain) || !(singleWord.test(plain) || (/\s/.test(plain) && /\p{L}{3}/u.test(plain))))
    return false;
  if (isRead(() => readLength(plain, 'Length', 'in')) || isRead(() => readCount(plain, 'Qty', '')))
    return false;
  return !columns.includes('section') || !isRead(() => readAnySection(plain, 'Section', 'in'));
}

const isRead = (read: () => unknown): boolean => ifRead(read) !== undefined;

function repeatsHeadings(words: readonly string[], filled: readonly (readonly [string, string])[]): boolean {
  const isHeading = (text: string) => headingNames([text])[0] !== undefined;
  const known = filled.filter(([heading, text]) => nameKey(text) === nameKey(heading) || isHeading(text));
  return known.length > 1 && words.every((text) => !/\d/.test(text) || isHeading(text));
}
