import type { CellValue } from '../../../core/quantity/cellValue.js';
import { turnedDate } from '../../../core/quantity/dateTrap.js';
import { readHeadings } from '../../../core/row/headings/readHeadings.js';
import { rowKindOf } from '../../../core/row/rowKind.js';
import type { Step } from '../../../workbook/step.js';
import { type ColumnMatch, headingsOf } from './columnMatch.js';
import { runsOf } from './failGroups.js';
import type { ListRead } from './listRead.js';

const countFields = new Set(['Qty', 'Holes', 'Corners', 'Notches', 'Bends', 'Miter left', 'Miter right']);

/**
 * Columns that adjoin become text together. Counts stay numbers, so that they can be summed; so does a number with a format
 * of its own, and what stands in a row that is no part.
 * @param formats of the rows, where numbers may have formats of their own
 */
export function textFormats(
  { area, rows }: Pick<ListRead, 'area' | 'rows'>,
  matches: readonly ColumnMatch[],
  formats: readonly (readonly string[])[] = [],
): Step[] {
  const headings = readHeadings(headingsOf(matches));
  const isPart = rows.map((row) => ['part', 'blank'].includes(rowKindOf(row, headings)));
  const isText = ({ field }: ColumnMatch) =>
    field !== undefined && !countFields.has(field.replace(/ \d$/, ''));
  const runs = runsOf(matches.filter(isText).map(({ at }) => at));
  if (rows.length === 0) return [];
  return runs.map(({ row: column, count }): Step => {
    const cells = {
      ...area,
      row: area.row + 1,
      rows: rows.length,
      column: area.column + column,
      columns: count,
    };
    // As text, a date would show its serial number: nobody could tell any more what was typed.
    const becomes = rows.map((row, down) =>
      Array.from({ length: count }, (_, at) => {
        const format = formats[down]?.[column + at];
        const keeps = !isPart[down] || isDate(row[column + at]) || hasOwnFormat(row[column + at], format);
        return keeps ? undefined : '@';
      }),
    );
    return { kind: 'cells', area: cells, formats: becomes };
  });
}

function hasOwnFormat(cell: CellValue | undefined, format = 'General'): boolean {
  return typeof cell === 'number' && format !== 'General' && format !== '';
}

function isDate(cell: CellValue | undefined): boolean {
  return typeof cell === 'number' && turnedDate(cell) !== undefined;
}
