import type { CellValue } from '../../../core/quantity/cellValue.js';
import type { Area } from '../../../workbook/area.js';
import type { Arrangement } from '../../../workbook/reading.js';
import { type ColumnMatch, mayHoldWork } from './columnMatch.js';
import type { ListSource } from './listSource.js';
import { headingSpan } from './listBounds.js';
import type { SheetChecks } from './sheetChecks.js';
import { twoHeadingRows } from './twoHeadingRows.js';

/** A list as it was read: its headings, and the rows below. */
export interface ListRead {
  source: ListSource;
  /** With the headings as its first row. */
  area: Area;
  headings: CellValue[];
  /** What stands in the row of headings, where another row above it says the rest. */
  written?: CellValue[];
  rows: CellValue[][];
  /** The checks that stand beside it on the sheet. */
  checks?: SheetChecks;
  /** What is merged and hidden in it. */
  arrangement?: Arrangement;
}

/** The list that begins with a heading row of what was read; in plain cells, as wide as its headings. */
export function listFrom(source: ListSource, area: Area, values: CellValue[][], pickedRow: number): ListRead {
  const two = source.table ? undefined : twoHeadingRows(values, pickedRow);
  const headingRow = two?.lower ?? pickedRow;
  const written = values[headingRow] ?? [];
  const headings = two?.headings ?? written;
  const { from, to } = source.table ? { from: 0, to: area.columns } : headingSpan(headings);
  const wide = values.slice(headingRow).map((row) => row.slice(from, to));
  return {
    source,
    area: {
      ...area,
      row: area.row + headingRow,
      rows: wide.length,
      column: area.column + from,
      columns: to - from,
    },
    headings: headings.slice(from, to),
    ...(two ? { written: wide[0] ?? [] } : {}),
    rows: wide.slice(1),
  };
}

/**
 * The columns that the check of a row is given: from the first to the last that has a meaning, and on to those that may hold
 * work which is not read, as far as no check column stands between.
 */
export function inputSpan(
  matches: readonly ColumnMatch[],
  checks?: SheetChecks,
): { first: ColumnMatch; last: ColumnMatch } | undefined {
  const read = matches.flatMap(({ field }, at) => (field === undefined ? [] : at));
  const [from, to] = [read[0], read.at(-1)];
  if (from === undefined || to === undefined) return undefined;
  const own = new Set(checks?.columns.map(({ at }) => at));
  const isCounted = matches.some(({ field }) => field === 'Qty');
  const first = farthest(matches.slice(0, from + 1).reverse(), own, isCounted);
  const last = farthest(matches.slice(to), own, isCounted);
  return first && last ? { first, last } : undefined;
}

/** The last of some columns that is read or may hold work, before the first check column. */
function farthest(
  matches: readonly ColumnMatch[],
  checks: ReadonlySet<number>,
  isCounted: boolean,
): ColumnMatch | undefined {
  const check = matches.findIndex(({ at }) => checks.has(at));
  return matches
    .slice(0, check < 0 ? matches.length : check)
    .filter((match) => match.field !== undefined || mayHoldWork(match, isCounted))
    .at(-1);
}
