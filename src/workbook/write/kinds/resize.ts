import { sameArea } from '../../area.js';
import type { Table } from '../../reading.js';
import { refuseChanged, refuseWorkedOn } from './refusals.js';
import type { ActionKind } from './kind.js';

/** Lets a table span other rows and columns. */
export const resize: ActionKind<'resize'> = {
  refuseShape: () => undefined,
  look: ({ table }) => ({ look: 'table', name: table }),
  plan: (step, seen) => ({ ...step, was: (seen as Table).area }),
  refuseChanged({ table, was }, seen) {
    if (!sameArea((seen as Table).area, was)) refuseChanged(`The table "${table}"`);
  },
  undo: ({ table, area, was }) => ({ kind: 'resize', table, area: was, was: area }),
  lookDone: ({ table }) => ({ look: 'table', name: table }),
  refuseWorkedOn(action, _after, seen) {
    const { name, area } = seen as Table;
    if (!sameArea(area, action.area)) refuseWorkedOn(`The table "${name}"`);
  },
  isUndone: ({ was }, seen) => sameArea((seen as Table).area, was),
  described: ({ table }) => `the table "${table}"`,
};
