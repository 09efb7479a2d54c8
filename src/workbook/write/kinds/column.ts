import { sameName } from '../../../sheet/names.js';
import { sameArea } from '../../area.js';
import type { Table } from '../../reading.js';
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
    const seen = given as Table;
    const { table, heading, contents } = step;
    const { area, headings } = tables.asLeft(seen);
    const at = (name: string) => headings.findIndex((each) => sameName(each, name));
    if (at(heading) >= 0) refuseTaken(`a column of ${table}`, heading);
    const left = step.rightOf === undefined ? headings.length - 1 : at(step.rightOf);
    if (left < 0)
      throw new WorkbookError('missing', `The table "${table}" has no column "${step.rightOf ?? ''}".`);
    const rows = area.rows - 1 - (seen.hasTotals ? 1 : 0);
    if (contents.length > rows)
      throw new WorkbookError('failed', `The table "${table}" has ${rows} rows, not ${contents.length}.`);
    const position = left + 1;
    tables.widen(seen, step, position);
    return { kind: 'column', table, heading, position, seen };
  },

  refuseChanged({ table, seen: planned }, seen) {
    const { area, headings } = seen as Table;
    const same = sameArea(area, planned.area) && headings.join('\n') === planned.headings.join('\n');
    if (!same) refuseChanged(`The table "${table}"`);
  },

  undo: ({ table, heading }) => ({ kind: 'drop column', table, heading }),
  lookDone: ({ table }) => ({ look: 'table', name: table }),

  refuseWorkedOn({ heading }, _after, seen) {
    const { name, headings } = seen as Table;
    if (!headings.includes(heading)) refuseWorkedOn(`The table "${name}"`);
  },

  isUndone: ({ heading }, seen) => !(seen as Table).headings.includes(heading),
  described: ({ table }) => `the table "${table}"`,
};
