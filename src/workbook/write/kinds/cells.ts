import { cellAddress, cellOf, matrix } from '../../area.js';
import { type Content, sameContent } from '../../content.js';
import type { CellsAction, CellState } from '../../writeHost.js';
import { refuseChanged, refuseWorkedOn, where } from './refusals.js';
import { checkContent, checkSize, refuse } from './shape.js';
import type { ActionKind } from './kind.js';

/** Writes contents and number formats. */
export const cells: ActionKind<'cells'> = {
  refuseShape({ area, contents, formats, widths }) {
    checkSize(area, contents);
    checkSize(area, formats);
    if (widths && widths.length !== area.columns)
      refuse(`${cellAddress(area)} was given widths for another number of columns.`);
    contents?.forEach((row) => row.forEach(checkContent));
  },

  look: ({ area }) => ({ look: 'cells', area }),

  plan({ area, contents, formats, widths }, seen) {
    return {
      kind: 'cells',
      area,
      contents: contents ?? matrix(area, undefined),
      formats: formats ?? matrix(area, undefined),
      before: (seen as CellState | undefined) ?? {
        contents: matrix<Content>(area, null),
        formats: matrix(area, 'General'),
      },
      ...(widths && { widths }),
      fresh: seen === undefined,
    };
  },

  refuseChanged(action, seen) {
    refuseOther(action, [action.before], seen as CellState, refuseChanged);
  },

  // Cells that came with a sheet or column go with it.
  undo: (action, after) => (action.fresh ? undefined : restoring(action, after ?? action.before)),

  lookDone: ({ area, standsAt = area }) => ({ look: 'cells', area: standsAt }),

  refuseWorkedOn(action, after, seen, { orAsBefore }) {
    const expected = [after ?? action.before, ...(orAsBefore ? [action.before] : [])];
    const { area, standsAt = area } = action;
    refuseOther({ ...action, area: standsAt }, expected, seen as CellState, refuseWorkedOn);
  },

  isUndone(action, seen) {
    const { contents, formats } = seen as CellState;
    const restored = restoring(action, action.before);
    return restored.contents.every((row, at) =>
      row.every(
        (content, across) =>
          (content === undefined || sameContent(content, contents[at]?.[across] ?? null)) &&
          (restored.formats[at]?.[across] ?? formats[at]?.[across]) === formats[at]?.[across],
      ),
    );
  },

  described: ({ area }) => `${cellAddress(area)} on sheet "${area.sheet}"`,
};

/** Writes back what was there; cells the action left alone are left alone again. */
function restoring({ area, contents, formats, before }: CellsAction, after: CellState): CellsAction {
  return {
    kind: 'cells',
    area,
    contents: contents.map((row, at) =>
      row.map((content, across) =>
        content === undefined ? undefined : (before.contents[at]?.[across] ?? null),
      ),
    ),
    // Writing a constant may set its format, so both are restored.
    formats: contents.map((row, at) =>
      row.map((content, across) =>
        content === undefined && formats[at]?.[across] === undefined
          ? undefined
          : before.formats[at]?.[across],
      ),
    ),
    before: after,
    fresh: false,
  };
}

/**
 * Refuses where a cell is as none of the expected states has it. Where the action leaves the content of a cell alone,
 * only its format counts: somebody may have typed there.
 */
function refuseOther(
  { area, contents: written }: CellsAction,
  expected: readonly CellState[],
  seen: CellState,
  refuseWith: (what: string) => never,
): void {
  seen.contents.forEach((row, at) =>
    row.forEach((now, across) => {
      const format = seen.formats[at]?.[across];
      const alone = written[at]?.[across] === undefined;
      const known = expected.some(
        ({ contents, formats }) =>
          (alone || sameContent(now, contents[at]?.[across] ?? null)) && format === formats[at]?.[across],
      );
      if (!known) refuseWith(where(cellOf(area, at, across)));
    }),
  );
}
