import { sameName } from '../../../sheet/names.js';
import { sameArea } from '../../area.js';
import type { Table } from '../../reading.js';
import type { Step } from '../../step.js';
import { WorkbookError } from '../../workbookError.js';
import { refuseChanged, refuseTaken, refuseWorkedOn } from './refusals.js';
import { checkContent } from './shape.js';
import type { ActionKind } from './kind.js';

/** Adds a column to a table; the cells below its heading are written when all columns are there. */
export const column: ActionKind<'column'> = {
  refuseShape({ heading, contents }) {
    contents.forEach(checkContent);
    checkContent(heading);
  },

  look: ({ table }) => ({ look: 'table', name: table }),

  plan(step, given, tables) {
    const seen = given as Table | undefined;
    const { table, heading, contents } = step;
    const left = tables.asLeft(table, seen);
    const { area, headings, hasTotals } = left;
    if (headings.some((each) => sameName(each, heading))) refuseTaken(`a column of ${table}`, heading);
    const position = positionOf(step, left);
    const rows = area.rows - 1 - (hasTotals ? 1 : 0);
    if (contents.length > rows)
      throw new WorkbookError('failed', `The table "${table}" has ${rows} rows, not ${contents.length}.`);
    tables.widen(left, step, position);
    return { kind: 'column', table, heading, position, area, seen };
  },

  refuseChanged({ table, seen: planned }, seen) {
    if (!planned) return;
    const { area, headings } = seen as Table;
    const same = sameArea(area, planned.area) && headings.join('\n') === planned.headings.join('\n');
    if (!same) refuseChanged(`The table "${table}"`);
  },

  undo: ({ table, heading, position, area }) => ({
    kind: 'drop column',
    table,
    heading,
    position,
    area: { ...area, columns: area.columns + 1 },
  }),
  lookDone: ({ table }) => ({ look: 'table', name: table }),

  refuseWorkedOn({ heading }, _after, seen) {
    const { name, headings } = seen as Table;
    if (!headings.includes(heading)) refuseWorkedOn(`The table "${name}"`);
  },

  isUndone: ({ heading }, seen) => !(seen as Table).headings.includes(heading),
  described: ({ table }) => `the table "${table}"`,
};

/** Where a column goes in its table, from 0. */
function positionOf(
  { table, leftOf, rightOf }: Extract<Step, { kind: 'column' }>,
  { headings }: Table,
): number {
  const beside = leftOf ?? rightOf;
  if (beside === undefined) return headings.length;
  const at = headings.findIndex((each) => sameName(each, beside));
  if (at < 0) throw new WorkbookError('missing', `The table "${table}" has no column "${beside}".`);
  return leftOf === undefined ? at + 1 : at;
}
