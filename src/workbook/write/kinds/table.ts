import { sameArea } from '../../area.js';
import type { Table } from '../../reading.js';
import { refuseAdded, refuseTaken, refuseWorkedOn } from './refusals.js';
import { checkName } from './shape.js';
import type { ActionKind } from './kind.js';

/** Makes cells a table. */
export const table: ActionKind<'table'> = {
  refuseShape: ({ name }) => checkName(name),
  look: ({ name }) => ({ look: 'is table', name }),
  plan(step, seen, tables) {
    if (seen) refuseTaken('a table', step.name);
    const { kind, name, area, keepsLook } = step;
    tables.make(step);
    return { kind, name, area, ...(keepsLook && { keepsLook }) };
  },
  refuseChanged({ name }, seen) {
    if (seen) refuseAdded(name);
  },
  undo: ({ name }) => ({ kind: 'drop table', name }),
  lookDone: ({ name }) => ({ look: 'table', name }),
  refuseWorkedOn(action, _after, seen, { all }) {
    const { name, area } = seen as Table;
    const added = all.filter((done) => done.action.kind === 'column' && done.action.table === action.name);
    const columns = action.area.columns + added.length;
    if (!sameArea(area, { ...action.area, columns })) refuseWorkedOn(`The table "${name}"`);
  },
  isUndone: (_action, seen) => !seen,
  described: ({ name }) => `the table "${name}"`,
};
