import { type Area, cellOf, overlap } from '../../area.js';
import type { CellState, MergeState } from '../../writeHost.js';
import type { ActionKind, Since } from './kind.js';
import { refuseChanged, refuseWorkedOn, where } from './refusals.js';

/** Takes merged cells apart. */
export const unmerge: ActionKind<'unmerge'> = {
  refuseShape: () => undefined,
  look: ({ area }) => ({ look: 'merged', area }),
  plan({ area }, seen) {
    const { isMerged, isCentered } = seen as MergeState;
    if (!isMerged) refuseChanged(where(area));
    return { kind: 'unmerge', area, isCentered };
  },
  refuseChanged({ area }, seen) {
    if (!(seen as MergeState).isMerged) refuseChanged(where(area));
  },
  undo: ({ area, isCentered }) => ({ kind: 'merge', area, isCentered }),
  lookDone: ({ area, standsAt = area }) => ({ look: 'cells', area: standsAt }),

  /** Merged again, only the first cell would keep what it holds. */
  refuseWorkedOn({ area, standsAt = area }, _after, seen, since) {
    (seen as CellState).contents.forEach((row, at) =>
      row.forEach((content, across) => {
        const cell = cellOf(standsAt, at, across);
        const isFirst = at === 0 && across === 0;
        if (content !== null && !isFirst && !isOurs(cell, since)) refuseWorkedOn(where(cell));
      }),
    );
  },

  isUndone: (_action, seen) => (seen as MergeState).isMerged,
  described: ({ area }) => `the merged cells ${where(area)}`,
};

/** What the same plan wrote goes before the cells are merged again. */
function isOurs(cell: Area, { all }: Since): boolean {
  return all.some(
    ({ action }) =>
      action.kind === 'cells' &&
      action.contents.some((row) => row.some((content) => content !== undefined)) &&
      overlap(action.standsAt ?? action.area, cell),
  );
}
