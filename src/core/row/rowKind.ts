import { type CellValue, meant } from '../quantity/cellValue.js';
import { nameKey } from '../shop/table.js';
import { headingNames } from './headings/readHeadings.js';
import type { Column, Headings } from './headings/readHeadings.js';
import { rowCells } from './headings/joinedColumns.js';
import { isOwnHeading } from './rowItem.js';

/** What a row that is not checked holds: it is no part. */
export type OtherRow = 'total' | 'title' | 'headings' | 'units' | 'note';

/** A row of a list: a part, nothing at all, or what lists hold beside parts. */
export type RowKind = 'part' | 'blank' | OtherRow;

const totalWords =
  /^\s*(?:(?:sub-?|grand |page )?totals?|sum|summe|gesamt\w*|zwischensumme|subtotaal|totaal|somme|suma)(?![\p{L}\d])/iu;
const unitWord = /^[([]? ?(?:mm|cm|[m°"'″′]|in|inch|inches|ft|feet|lbs?|kg|ea|pcs?|no|deg)\.? ?[)\]]?$/i;
/** Whether a text says a unit and nothing else: `(in)`, `mm`. */
export const isUnitWord = (text: string): boolean => unitWord.test(text.trim());

/** A size: no title has one. */
const size = /\d ?[x×*/"'″′]|\d[-.,]\d/i;
const singleWord = /^\p{L}{4,}[:.]?$/u;
/** What a row of totals may give beside its word. */
const summed = new Set(['mark', 'drawing', 'revision', 'qty', 'length', 'feet', 'inches', 'holes']);

/**
 * What a row is. Nothing that could be a part is taken for something else: a title is one text alone, without a size, in
 * words that no mark is; a total has no grade and no work; a row of headings or units holds nothing beside them.
 */
export function rowKindOf(given: readonly CellValue[], headings: Headings): RowKind {
  const cells = rowCells(given, headings);
  const at = (column: Column | undefined) => meant(cells[column?.at ?? -1]);
  const { fields, groups } = headings;
  const section = at(fields.section);
  if (section !== null && at(fields.grade) !== null && /\d/.test(String(section))) return 'part';
  const read = [fields, ...groups].flatMap((each) => Object.entries(each));
  const filled = read.filter(([, column]) => at(column) !== null);
  const texts = ownCells(cells.slice(0, given.length), headings);
  if (filled.length === 0) return texts.length === 0 ? 'blank' : 'note';
  const words = texts.filter((cell) => typeof cell === 'string');
  const total = words.find((cell) => totalWords.test(cell));
  const isSummed = ([field, column]: [string, Column]) => summed.has(field) || at(column) === total;
  if (total !== undefined && (section === null || section === total) && filled.every(isSummed))
    return 'total';
  if (words.length < texts.length) return 'part';
  if (words.length === 1 && isTitle(words[0] ?? '')) return 'title';
  if (words.every(isUnitWord)) return 'units';
  return repeatsHeadings(
    words,
    filled.map(([, column]) => [column.heading, String(at(column))]),
  )
    ? 'headings'
    : 'part';
}

/** What stands in a row, the check columns beside the list left out. */
function ownCells(cells: readonly CellValue[], { unread }: Headings): CellValue[] {
  const own = new Set(unread.flatMap(({ at, heading }) => (isOwnHeading(heading) ? at : [])));
  return cells.filter((cell, at) => meant(cell) !== null && !own.has(at));
}

/** `CATWALK LEVEL 2`, `Handrail`; not `P12`, `BA`, which name a piece. */
function isTitle(text: string): boolean {
  const plain = text.trim();
  return !size.test(plain) && (singleWord.test(plain) || (/\s/.test(plain) && /\p{L}{3}/u.test(plain)));
}

function repeatsHeadings(words: readonly string[], filled: readonly (readonly [string, string])[]): boolean {
  const isHeading = (text: string) => headingNames([text])[0] !== undefined;
  const known = filled.filter(([heading, text]) => nameKey(text) === nameKey(heading) || isHeading(text));
  return known.length > 1 && words.every((text) => !/\d/.test(text) || isHeading(text));
}
