import type { Action, CellsAction, CellState } from './host.js';

/** An action that was done, and the state of its cells right afterwards. */
export interface Done {
  action: Action;
  after: CellState | undefined;
}

/** What takes actions back, the last one first. Cells that came with a sheet or column go with it. */
export function undoing(done: readonly Done[]): Action[] {
  return [...done].reverse().flatMap(({ action, after }) => undoOf(action, after) ?? []);
}

function undoOf(action: Action, after: CellState | undefined): Action | undefined {
  switch (action.kind) {
    case 'cells':
      return action.fresh ? undefined : restoring(action, after ?? action.before);
    case 'sheet':
      return { kind: 'drop sheet', name: action.name };
    case 'table':
      return { kind: 'drop table', name: action.name };
    case 'column':
      return { kind: 'drop column', table: action.table, heading: action.heading };
    case 'name':
      return { kind: 'drop name', name: action.name };
    case 'resize':
      return { kind: 'resize', table: action.table, area: action.was, was: action.area };
    default:
      throw new Error(`${action.kind} is not taken back`);
  }
}

/** Writes back what was there; cells the action left alone are left alone again. */
function restoring({ area, contents, formats, before }: CellsAction, after: CellState): CellsAction {
  return {
    kind: 'cells',
    area,
    contents: contents.map((row, at) =>
      row.map((content, column) =>
        content === undefined ? undefined : (before.contents[at]?.[column] ?? null),
      ),
    ),
    // Writing a constant may set its format, so both are restored.
    formats: contents.map((row, at) =>
      row.map((content, column) =>
        content === undefined && formats[at]?.[column] === undefined
          ? undefined
          : before.formats[at]?.[column],
      ),
    ),
    before: after,
    fresh: false,
  };
}
