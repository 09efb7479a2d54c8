import { fractionTurnedDate } from '../../../core/quantity/dateTrap.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import type { Area } from '../../../workbook/area.js';
import type { Step } from '../../../workbook/write/step.js';
import { counted } from '../../shared/change/describeStep.js';
import type { Proposal } from '../../shared/change/proposal.js';
import { shortText } from '../../shared/shortText.js';
import type { ColumnMatch } from './columnMatch.js';
import { runsOf } from './failGroups.js';
import { inputSpan, type ListRead } from './listRead.js';

/** The cells of a column in some rows of a list, as few areas as there are runs of neighbours. */
export function areasOf({ area }: ListRead, column: number, rows: readonly number[]): Area[] {
  return runsOf(rows).map(({ row, count }) => ({
    sheet: area.sheet,
    row: area.row + 1 + row,
    column: area.column + column,
    rows: count,
    columns: 1,
  }));
}

/** Writes a press into the rows of a group; adds the column Press where the list has none. */
export function setPress(
  list: ListRead,
  matches: readonly ColumnMatch[],
  rows: readonly number[],
  press: string,
): Proposal | string {
  const title = `Set press ${shortText(press)} for ${counted(rows.length, 'row')}`;
  const column = matches.find(({ field }) => field === 'Press');
  if (column) {
    const steps = areasOf(list, column.at, rows).map(
      (area): Step => ({ kind: 'cells', area, contents: Array.from({ length: area.rows }, () => [press]) }),
    );
    return { title, steps };
  }
  const table = list.source.table?.name;
  const span = inputSpan(matches);
  if (table === undefined || !span)
    return 'The list has no column Press. Add check columns first: Press comes with them.';
  const set = new Set(rows);
  const contents = list.rows.map((_, row) => (set.has(row) ? press : null));
  return {
    title,
    steps: [{ kind: 'column', table, rightOf: span.last.heading, heading: 'Press', contents, format: '@' }],
  };
}

export interface DateCell {
  row: number;
  column: number;
  text: string;
}

/** The cells of holes and bolts in which a fraction became a date. */
export function dateCells(list: ListRead, matches: readonly ColumnMatch[], unit: LengthUnit): DateCell[] {
  if (unit !== 'in') return [];
  const columns = matches.filter(({ field }) => /^(?:Hole|Bolt)(?: \d)?$/.test(field ?? ''));
  return columns.flatMap(({ at }) =>
    list.rows.flatMap((cells, row) => {
      const cell = cells[at];
      const text = typeof cell === 'number' ? fractionTurnedDate(cell) : undefined;
      return text === undefined ? [] : [{ row, column: at, text }];
    }),
  );
}

/** Writes the fractions back as text. */
export function fixDates(list: ListRead, cells: readonly DateCell[]): Proposal {
  const steps = cells.map(({ row, column, text }): Step => {
    const [area] = areasOf(list, column, [row]) as [Area];
    return { kind: 'cells', area, contents: [[text]], formats: [['@']] };
  });
  return { title: `Fix ${counted(cells.length, 'date')}`, steps };
}
