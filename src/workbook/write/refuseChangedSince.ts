import { type Area, cellAddress, cellOf, overlap, readAddresses, sameArea } from '../area.js';
import { sameContent } from '../content.js';
import { WorkbookError } from '../workbookError.js';
import type { Action, CellsAction, CellState, Look, WriteHost } from './host.js';
import { lookInSlices } from './lookInSlices.js';
import type { Done } from './undo.js';

interface SinceOptions {
  /** Everything that was done, where only a part of it is looked at. */
  all?: readonly Done[];
  /** Cells may also be as before the write: a taking back that failed halfway has restored some. */
  orAsBefore?: boolean;
}

/** Refuses to take back what somebody has worked on since: one round trip, more for large areas. */
export async function refuseChangedSince(
  done: readonly Done[],
  host: WriteHost,
  { all = done, orAsBefore = false }: SinceOptions = {},
): Promise<void> {
  const looks = done.map(({ action }) => lookFor(action));
  const answers = await lookInSlices(
    looks.flatMap((look) => look ?? []),
    host,
  );
  done.forEach((each, at) => {
    if (looks[at]) refuseDifferent(each, answers.shift(), all, orAsBefore);
  });
}

function lookFor(action: Action): Look | undefined {
  switch (action.kind) {
    case 'cells':
      return { look: 'cells', area: action.area };
    case 'sheet':
      return { look: 'used', sheet: action.name };
    case 'table':
      return { look: 'table', name: action.name };
    case 'column':
    case 'resize':
      return { look: 'table', name: action.table };
    case 'name':
      return { look: 'name', name: action.name };
    default:
      return undefined;
  }
}

function refuseDifferent(
  { action, after }: Done,
  seen: unknown,
  done: readonly Done[],
  orAsBefore: boolean,
): void {
  switch (action.kind) {
    case 'cells':
      return refuseOther(
        action,
        [after ?? action.before, ...(orAsBefore ? [action.before] : [])],
        seen as CellState,
        refuseWorkedOn,
      );
    case 'sheet':
      return refuseAdded(seen as CellState & { area: Area }, done);
    case 'table':
    case 'resize': {
      const { name, area } = seen as { name: string; area: Area };
      if (!sameArea(area, action.area)) refuseWorkedOn(`The table "${name}"`);
      return;
    }
    case 'column': {
      const { name, headings } = seen as { name: string; headings: string[] };
      if (!headings.includes(action.heading)) refuseWorkedOn(`The table "${name}"`);
      return;
    }
    case 'name': {
      const refersTo = (seen as { refersTo: string } | undefined)?.refersTo ?? '';
      if (!refersToArea(refersTo, action.area)) refuseWorkedOn(`The name "${action.name}"`);
    }
  }
}

/** Hosts write the same reference with or without quotes. */
function refersToArea(formula: string, area: Area): boolean {
  try {
    const [only, ...more] = readAddresses(formula.replace(/^=/, ''), area.sheet);
    return only !== undefined && more.length === 0 && sameArea(only, area);
  } catch {
    return false;
  }
}

/** On a sheet that is to go, only what we wrote may stand. */
function refuseAdded({ area, contents }: CellState & { area: Area }, done: readonly Done[]): void {
  const ours = done.flatMap(({ action }) => (action.kind === 'cells' ? action.area : []));
  contents.forEach((row, at) =>
    row.forEach((content, column) => {
      const cell = cellOf(area, at, column);
      if (content !== null && !ours.some((written) => overlap(written, cell))) refuseWorkedOn(where(cell));
    }),
  );
}

/**
 * Refuses where a cell is as none of the expected states has it. Where the action leaves the content of a cell alone,
 * only its format counts: somebody may have typed there.
 */
export function refuseOther(
  { area, contents: written }: CellsAction,
  expected: readonly CellState[],
  seen: CellState,
  refuseWith: (what: string) => never = refuseChanged,
): void {
  seen.contents.forEach((row, at) =>
    row.forEach((now, column) => {
      const format = seen.formats[at]?.[column];
      const alone = written[at]?.[column] === undefined;
      const known = expected.some(
        ({ contents, formats }) =>
          (alone || sameContent(now, contents[at]?.[column] ?? null)) && format === formats[at]?.[column],
      );
      if (!known) refuseWith(where(cellOf(area, at, column)));
    }),
  );
}

const where = (cell: Area) => `${cellAddress(cell)} on sheet "${cell.sheet}"`;

function refuseWorkedOn(what: string): never {
  throw new WorkbookError(
    'changed',
    `${what} was changed since this was written, so it is not taken back: undo that change first, or keep both.`,
  );
}

export function refuseChanged(what: string): never {
  throw new WorkbookError('changed', `${what} was changed meanwhile: look again before you write.`);
}
