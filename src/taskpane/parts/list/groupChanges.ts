import type { LengthUnit } from '../../../core/quantity/units.js';
import { readHeadings } from '../../../core/row/headings/readHeadings.js';
import { turnedDatesOfRow } from '../../../core/row/turnedDates.js';
import type { Area } from '../../../workbook/area.js';
import type { Step } from '../../../workbook/step.js';
import { counted } from '../../shared/change/describeStep.js';
import type { Proposal } from '../../shared/change/proposal.js';
import { shortText } from '../../shared/shortText.js';
import { type ColumnMatch, headingsOf } from './columnMatch.js';
import { runsOf } from './failGroups.js';
import { inputSpan, type ListRead } from './listRead.js';

/** The cells of a column in some rows of a list, as few areas as there are runs of neighbors. */
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
  const span = inputSpan(matches, list.checks);
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
  /** `16 September 2026`. */
  date: string;
  /** Every size that turns into the date: one is certain. */
  readings: readonly string[];
}

/** The cells of the whole list in which a size became a date, whatever else is wrong with their rows. */
export function dateCells(list: ListRead, matches: readonly ColumnMatch[], unit: LengthUnit): DateCell[] {
  const headings = readHeadings(headingsOf(matches));
  return list.rows.flatMap((cells, row) =>
    turnedDatesOfRow(cells, headings, unit).map(({ at, date, readings }) => ({
      row,
      column: at,
      date,
      readings,
    })),
  );
}

/** Writes the sizes back as text, where it is certain which they were. */
export function fixDates(list: ListRead, cells: readonly DateCell[]): Proposal {
  const steps = cells.flatMap(({ row, column, readings: [text, ...others] }): Step[] => {
    if (text === undefined || others.length > 0) return [];
    const [area] = areasOf(list, column, [row]) as [Area];
    return [{ kind: 'cells', area, contents: [[text]], formats: [['@']] }];
  });
  return { title: `Fix ${counted(steps.length, 'date')}`, steps };
}
