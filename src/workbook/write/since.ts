import { type Area, cellAddress, cellOf, overlap, readAddresses, sameArea } from '../area.js';
import { sameContent } from '../content.js';
import { WorkbookError } from '../workbookError.js';
import type { Action, CellState, Look, WriteHost } from './host.js';
import { lookInSlices } from './lookInSlices.js';
import type { Done } from './undo.js';

/** One round trip: refuses where cells no longer hold what the plan has shown. */
export async function refuseChangedSincePlan(actions: readonly Action[], host: WriteHost): Promise<void> {
  const cells = actions.flatMap((action) => (action.kind === 'cells' && !action.fresh ? action : []));
  const states = await lookInSlices(
    cells.map(({ area }) => ({ look: 'cells', area })),
    host,
  );
  cells.forEach(({ area, before }, at) => refuseOther(area, before, states[at] as CellState));
}

/** One round trip: refuses to take back what somebody has worked on since. */
export async function refuseChangedSince(done: readonly Done[], host: WriteHost): Promise<void> {
  const looks = done.map(({ action }) => lookFor(action));
  const answers = await lookInSlices(
    looks.flatMap((look) => look ?? []),
    host,
  );
  done.forEach((each, at) => {
    if (looks[at]) refuseDifferent(each, answers.shift(), done);
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

function refuseDifferent({ action, after }: Done, seen: unknown, done: readonly Done[]): void {
  switch (action.kind) {
    case 'cells':
      return refuseOther(action.area, after ?? action.before, seen as CellState);
    case 'sheet':
      return refuseAdded(seen as CellState & { area: Area }, done);
    case 'table':
    case 'resize': {
      const { name, area } = seen as { name: string; area: Area };
      if (!sameArea(area, action.area)) refuse(`The table "${name}"`);
      return;
    }
    case 'column': {
      const { name, headings } = seen as { name: string; headings: string[] };
      if (!headings.includes(action.heading)) refuse(`The table "${name}"`);
      return;
    }
    case 'name': {
      const refersTo = (seen as { refersTo: string } | undefined)?.refersTo ?? '';
      if (!refersToArea(refersTo, action.area)) refuse(`The name "${action.name}"`);
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
      if (content !== null && !ours.some((written) => overlap(written, cell))) refuse(where(cell));
    }),
  );
}

function refuseOther(area: Area, expected: CellState, seen: CellState | undefined): void {
  expected.contents.forEach((row, at) =>
    row.forEach((content, column) => {
      const now = seen?.contents[at]?.[column];
      const sameFormat = seen?.formats[at]?.[column] === expected.formats[at]?.[column];
      if (now === undefined || !sameContent(now, content) || !sameFormat)
        refuse(where(cellOf(area, at, column)));
    }),
  );
}

const where = (cell: Area) => `${cellAddress(cell)} on sheet "${cell.sheet}"`;

function refuse(what: string): never {
  throw new WorkbookError('changed', `${what} was changed meanwhile: look again before you write.`);
}
