import { type CellValue, isBlank } from '../../../core/quantity/cellValue.js';
import { fieldOf } from './columnMatch.js';
import { usualHeading } from './usualHeadings.js';

type Grid = readonly (readonly CellValue[])[];

/** A rectangle within cells that were read, its last row and column included. */
export interface Box {
  top: number;
  left: number;
  bottom: number;
  right: number;
}

/**
 * The list around a cell: a blank column ends it, and two blank rows, since groups of a list are often set apart
 * by one; so does a blank row with the headings of another list below it. Undefined where nothing is there.
 */
export function listAround(cells: Grid, row: number, column: number): Box | undefined {
  let box: Box = { top: row, left: column, bottom: row, right: column };
  for (;;) {
    const next = grown(cells, box);
    if (size(next) === size(box)) break;
    box = next;
  }
  const trimmed = trim(cells, box);
  return trimmed && ownRows(cells, trimmed, row);
}

const size = ({ top, left, bottom, right }: Box) => (bottom - top + 1) * (right - left + 1);

function grown(cells: Grid, box: Box): Box {
  let { top, left, bottom, right } = box;
  const row = (at: number) => filledRow(cells, at, left, right);
  while (row(bottom + 1) || row(bottom + 2)) bottom += row(bottom + 1) ? 1 : 2;
  while (row(top - 1) || row(top - 2)) top -= row(top - 1) ? 1 : 2;
  const column = (at: number) => cells.slice(top, bottom + 1).some((each) => !isBlank(each[at] ?? null));
  while (column(right + 1)) right += 1;
  while (column(left - 1)) left -= 1;
  return { top, left, bottom, right };
}

function filledRow(cells: Grid, row: number, left: number, right: number): boolean {
  return cells[row]?.slice(left, right + 1).some((cell) => !isBlank(cell)) ?? false;
}

/** Without blank rows and columns at its ends: the cell it began with may have been blank. */
function trim(cells: Grid, { top, left, bottom, right }: Box): Box | undefined {
  const filled = (row: number) => filledRow(cells, row, left, right);
  while (top <= bottom && !filled(top)) top += 1;
  while (bottom > top && !filled(bottom)) bottom -= 1;
  if (top > bottom) return undefined;
  const column = (at: number) => cells.slice(top, bottom + 1).some((row) => !isBlank(row[at] ?? null));
  while (!column(left)) left += 1;
  while (!column(right)) right -= 1;
  return { top, left, bottom, right };
}

/** The rows of the list that a row belongs to, where several stand below each other with their own headings. */
function ownRows(cells: Grid, box: Box, row: number): Box {
  const starts = listStarts(cells, box);
  const own = Math.max(0, starts.filter((start) => start <= row).length - 1);
  const [start, next] = [starts[own], starts[own + 1]];
  const top = own === 0 ? box.top : (start ?? box.top);
  return trim(cells, { ...box, top, bottom: next === undefined ? box.bottom : next - 1 }) ?? box;
}

/** Headings are looked for in so many rows below a blank one: a title may stand above them. */
const titleRows = 3;

function listStarts(cells: Grid, { top, left, bottom, right }: Box): number[] {
  const filled = (row: number) => filledRow(cells, row, left, right);
  const starts: number[] = [];
  let own: readonly CellValue[] = [];
  for (let row = top; row <= bottom; row++) {
    if (!filled(row) || (row > top && filled(row - 1))) continue;
    const block = cells.slice(row, Math.min(row + titleRows, bottom + 1));
    const end = block.findIndex((_, at) => !filled(row + at));
    const first = (end < 0 ? block : block.slice(0, end)).map((each) => each.slice(left, right + 1));
    const headings = first.findIndex((each) => knownHeadings(each) > 1);
    if (headings < 0 || (starts.length > 0 && isNextPage(first, headings, own))) continue;
    starts.push(row);
    own = first[headings] ?? [];
  }
  return starts;
}

/** `Page 2`, `Sheet 2 of 3`, `2`; not `Sheet metal`. */
const pageTitle =
  /^ ?(?:page|sheet|seite|blatt|blad|pagina|página|feuille)?[.:#]? ?(?:\d+ ?(?:(?:of|von|van|de|\/) ?\d+)? ?)?$/i;

/** The same headings once more, below nothing but the number of a page: the list goes on. */
function isNextPage(block: Grid, headings: number, own: readonly CellValue[]): boolean {
  const titles = block.slice(0, headings).flatMap((row) => row.filter((cell) => !isBlank(cell)));
  const isSame = block[headings]?.every((cell, at) => (cell ?? '') === (own[at] ?? ''));
  return isSame === true && titles.every((cell) => pageTitle.test(String(cell)));
}

/** How many cells of a row are headings that a check reads. */
export function knownHeadings(row: readonly CellValue[]): number {
  const known = (text: string) => fieldOf(text) ?? usualHeading(text);
  return row.filter((cell) => typeof cell === 'string' && known(cell) !== undefined).length;
}

/** Rows of a list that goes on without an end: it ends before two blank rows. */
export function rowsToGap(rows: Grid): number {
  const blank = rows.map((row) => row.every(isBlank));
  const gap = blank.findIndex((each, at) => at > 0 && each && blank[at + 1] === true);
  return gap < 0 ? rows.length : gap;
}

/**
 * The columns that a row of headings spans: a blank heading ends it, unless one that is read stands further right.
 */
export function headingSpan(headings: readonly CellValue[]): { from: number; to: number } {
  const filled = headings.map((cell) => !isBlank(cell));
  const known = headings.map((cell) => knownHeadings([cell]) > 0);
  const first = known.includes(true) ? known.indexOf(true) : filled.indexOf(true);
  if (first < 0) return { from: 0, to: headings.length };
  const last = known.lastIndexOf(true);
  let from = first;
  while (filled[from - 1]) from -= 1;
  let to = Math.max(first, last) + 1;
  while (filled[to]) to += 1;
  return { from, to };
}
