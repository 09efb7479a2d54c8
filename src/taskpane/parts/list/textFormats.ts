import type { CellValue } from '../../../core/quantity/cellValue.js';
import { turnedDate } from '../../../core/quantity/dateTrap.js';
import type { Step } from '../../../workbook/step.js';
import type { ColumnMatch } from './columnMatch.js';
import { runsOf } from './failGroups.js';
import type { ListRead } from './listRead.js';

const countFields = new Set(['Qty', 'Holes', 'Corners', 'Notches', 'Bends', 'Miter left', 'Miter right']);

/** Columns that adjoin become text together. Counts stay numbers, so that they can be summed. */
export function textFormats(
  { area, rows }: Pick<ListRead, 'area' | 'rows'>,
  matches: readonly ColumnMatch[],
): Step[] {
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
    const formats = rows.map((row) =>
      Array.from({ length: count }, (_, at) => (isDate(row[column + at]) ? undefined : '@')),
    );
    return { kind: 'cells', area: cells, formats };
  });
}

function isDate(cell: CellValue | undefined): boolean {
  return typeof cell === 'number' && turnedDate(cell) !== undefined;
}
