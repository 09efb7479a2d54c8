import { type Area, cellOf, overlap } from '../../area.js';
import type { CellState } from '../../writeHost.js';
import { refuseAdded, refuseTaken, refuseWorkedOn, where } from './refusals.js';
import { checkSheetName } from './shape.js';
import type { ActionKind } from './kind.js';

/** Adds an empty sheet. */
export const sheet: ActionKind<'sheet'> = {
  refuseShape: ({ name }) => checkSheetName(name),
  look: ({ name }) => ({ look: 'sheet', name }),
  plan(step, seen) {
    if (seen) refuseTaken('a sheet', step.name);
    return step;
  },
  refuseChanged({ name }, seen) {
    if (seen) refuseAdded(name);
  },
  undo: ({ name }) => ({ kind: 'drop sheet', name }),
  lookDone: ({ name }) => ({ look: 'used', sheet: name }),

  /** On a sheet that is to go, only what we wrote may stand. */
  refuseWorkedOn(_action, _after, seen, { all }) {
    const { area, contents } = seen as CellState & { area: Area };
    const ours = all.flatMap(({ action }) => (action.kind === 'cells' ? action.area : []));
    contents.forEach((row, at) =>
      row.forEach((content, across) => {
        const cell = cellOf(area, at, across);
        if (content !== null && !ours.some((written) => overlap(written, cell))) refuseWorkedOn(where(cell));
      }),
    );
  },

  isUndone: (_action, seen) => !seen,
  described: ({ name }) => `the sheet "${name}"`,
};
