import { refuse } from '../inputError.js';
import { type CellValue, isBlank, meant, plainText } from '../quantity/cellValue.js';

/** Rows of cells, the headings first. */
export type Cells = readonly (readonly CellValue[])[];

const hasGaps = /[\s_]{2}|_|[^\S ]/;

/** A heading, an item or a name as it is compared: without case, accents of spacing, or punctuation at the ends. */
export function nameKey(text: CellValue | undefined): string {
  if (isBlank(text)) return '';
  const lower = plainText(String(text)).toLowerCase();
  return hasGaps.test(lower) ? lower.replace(/[\s_]+/g, ' ').trim() : lower;
}

const longestName = 30;

/** The first few names read, each shortened, for a refusal. */
export function shortNames(names: readonly string[]): string {
  const short = names.slice(0, 8).map((name) => plainText(name).slice(0, longestName));
  return short.join(', ');
}

export interface Table {
  headings: readonly CellValue[];
  /** Without the headings; every form of a blank cell is null. */
  rows: Cells;
  /** The column under a heading; undefined where the table has no such column. */
  column(heading: string): number | undefined;
  cell(row: readonly CellValue[], heading: string): CellValue;
}

/** A table of the Shop sheet by its headings. Throws where a needed heading is missing. */
export function readTable(cells: Cells, tableName: string, needed: readonly string[]): Table {
  const columns = new Map<string, number>();
  const [headings = [], ...rows] = cells.map((row) => row.map(meant));
  headings.forEach((heading, column) => {
    const key = nameKey(heading);
    if (key !== '' && !columns.has(key)) columns.set(key, column);
  });
  const missing = needed.find((heading) => !columns.has(nameKey(heading)));
  if (missing !== undefined) {
    const read = shortNames(headings.filter((heading) => !isBlank(heading)).map(String)) || 'nothing';
    refuse(
      tableName,
      read,
      `there is no column "${missing}" in its first row (read: ${read}).`,
      `Give the whole table with its headings: ${needed.join(', ')}.`,
    );
  }
  const column = (heading: string) => columns.get(nameKey(heading));
  return {
    headings,
    rows,
    column,
    cell: (row, heading) => row[column(heading) ?? -1] ?? null,
  };
}
