import { type CellValue, isBlank, plainText } from '../../quantity/cellValue.js';
import { withoutNothings } from './nothingCells.js';
import type { Column, Headings } from './readHeadings.js';
import type { UnreadColumn } from './unreadWork.js';

/** Two columns that are read as one cell, which stands behind those of the row. */
export interface Join {
  at: number;
  read(cells: readonly CellValue[]): CellValue;
}

/** The headings with one column for thickness and width, and one for feet and inches, where lists part them. */
export function withJoins(headings: Headings, columns: number): Headings {
  const { size, thickness, width, length, feet, inches } = headings.fields;
  const joins: Join[] = [];
  const fields = { ...headings.fields };
  let section = fields.section ?? size;
  if (section) fields.section = section;
  if (section && size && section !== size) {
    const [word, sizes] = [section, size];
    const at = columns + joins.length;
    section = { ...size, at, heading: word.heading };
    fields.section = section;
    joins.push({ at, read: (cells) => wordAndSize(cells, word, sizes) });
  }
  if (thickness && width) {
    const at = columns + joins.length;
    const heading = section?.heading ?? `${thickness.heading} and ${width.heading}`;
    fields.section = section?.unit ? { ...section, at, heading } : { at, heading };
    joins.push({ at, read: (cells) => flatOf(cells, { section, thickness, width }) });
  }
  if (!length && feet && inches) {
    const at = columns + joins.length;
    fields.length = { at, heading: `${feet.heading} and ${inches.heading}` };
    joins.push({ at, read: (cells) => lengthOf(cells, feet, inches) });
  }
  const besideLength: UnreadColumn[] = [];
  if (length && feet) besideLength.push({ at: feet.at, heading: feet.heading, names: 'size', unit: 'ft' });
  if (length && inches && !feet) besideLength.push({ at: inches.at, heading: inches.heading, names: 'size' });
  const unread = besideLength.length === 0 ? headings.unread : [...headings.unread, ...besideLength];
  return joins.length === 0 ? { ...headings, fields, unread } : { ...headings, fields, unread, joins };
}

/** The cells of a row as they are read: blank where they say that there is none, and those that are joined behind them. */
export function rowCells(given: readonly CellValue[], headings: Headings): readonly CellValue[] {
  const cells = withoutNothings(given, headings);
  const { joins } = headings;
  if (!joins) return cells;
  const row = [...cells];
  for (const { at, read } of joins) row[at] = read(cells);
  return row;
}

/** A section whose word stands in one column and its sizes in another: `FL` and `100x10`. One that has sizes is all of it. */
function wordAndSize(cells: readonly CellValue[], word: Column, sizes: Column): CellValue {
  const [first, second] = [cells[word.at] ?? null, cells[sizes.at] ?? null];
  if (isBlank(second) || /\d/.test(String(first ?? ''))) return first;
  return isBlank(first) ? second : `${plainText(String(first))} ${plainText(String(second))}`;
}

interface FlatColumns {
  section: Column | undefined;
  thickness: Column;
  width: Column;
}

/** A plate by its two sizes; a section that has sizes of its own stands for itself. Without a word it is a plate. */
function flatOf(cells: readonly CellValue[], { section, thickness, width }: FlatColumns): CellValue {
  const written = section ? (cells[section.at] ?? null) : null;
  const hasSizes = typeof written === 'string' && /\d/.test(written);
  const sizes = [thickness, width].map((column) => sizeText(cells[column.at], column));
  if (hasSizes || sizes.every((size) => size === '')) return written;
  const word = isBlank(written) ? 'PL' : plainText(String(written));
  return `${word} ${sizes.join(' x ')}`;
}

function sizeText(cell: CellValue | undefined, { unit }: Column): string {
  if (isBlank(cell) || cell === 0) return '';
  const text = plainText(String(cell));
  return unit && /[\d½¼¾⅛⅜⅝⅞]$/.test(text) ? `${text} ${unit}` : text;
}

function lengthOf(cells: readonly CellValue[], feet: Column, inches: Column): CellValue {
  const [whole, rest] = [feet, inches].map(({ at }) =>
    isBlank(cells[at]) ? '' : plainText(String(cells[at])).replace(/ ?(?:['"′″’”]|''|ft\.?|in\.?)$/i, ''),
  );
  if (!whole && !rest) return null;
  return `${whole || '0'}'-${rest || '0'}"`;
}
