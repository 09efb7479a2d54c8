import { sameArea } from '../../area.js';
import type { Table } from '../../reading.js';
import { refuseAdded, refuseTaken, refuseWorkedOn } from './refusals.js';
import { checkName } from './shape.js';
import type { ActionKind } from './kind.js';

/** Makes cells a table. */
export const table: ActionKind<'table'> = {
  refuseShape: ({ name }) => checkName(name),
  look: ({ name }) => ({ look: 'is table', name }),
  plan(step, seen) {
    if (seen) refuseTaken('a table', step.name);
    return step;
  },
  refuseChanged({ name }, seen) {
    if (seen) refuseAdded(name);
  },
  undo: ({ name }) => ({ kind: 'drop table', name }),
  lookDone: ({ name }) => ({ look: 'table', name }),
  refuseWorkedOn(action, _after, seen) {
    const { name, area } = seen as Table;
    if (!sameArea(area, action.area)) refuseWorkedOn(`The table "${name}"`);
  },
  isUndone: (_action, seen) => !seen,
  described: ({ name }) => `the table "${name}"`,
};
