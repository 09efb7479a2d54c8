import { cellAddress, sameArea } from '../area.js';
import { sameContent } from '../content.js';
import type { Table } from '../reading.js';
import { WorkbookError } from '../workbookError.js';
import type { Action, CellState, Look, WriteHost } from './host.js';
import { lookInSlices } from './lookInSlices.js';
import { refuseChangedSince } from './refuseChangedSince.js';
import { type Done, undoing } from './undo.js';

/**
 * After a failure: takes back what was done, and whatever the failed message did before it failed, one by
 * one, then looks whether everything is as it was. Gives the error to throw.
 */
export async function takeBack(
  error: unknown,
  done: readonly Done[],
  failed: readonly Action[],
  host: WriteHost,
): Promise<WorkbookError> {
  const cause = asWorkbookError(error);
  const perhaps = failed.map((action): Done => ({ action, after: undefined }));
  const tried = [...done, ...perhaps];
  const left: string[] = [];
  for (const each of [...tried].reverse()) {
    const [action] = undoing([each]);
    if (!action || (perhaps.includes(each) && !(await isOurs(each, tried, host)))) continue;
    try {
      await host.perform([action]);
    } catch (failure) {
      if (!(await isAsBefore(action, host)))
        left.push(`${described(action)} (${asWorkbookError(failure).message})`);
    }
  }
  if (left.length === 0) return cause;
  return new WorkbookError(cause.trouble, `${cause.message} Not put back: ${left.slice(0, 5).join('; ')}.`, {
    cause,
  });
}

/** What of a taking back that failed halfway is not as it was before the write. */
export async function stillToTakeBack(done: readonly Done[], host: WriteHost): Promise<Done[]> {
  const left: Done[] = [];
  for (const each of done) {
    const [action] = undoing([each]);
    if (action && !(await isAsBefore(action, host))) left.push(each);
  }
  // Cells that came with a sheet or column are looked at as long as that is there.
  const comeAlong = left.some(({ action: { kind } }) => kind === 'sheet' || kind === 'column');
  return done.filter((each) => left.includes(each) || (comeAlong && undoing([each]).length === 0));
}

function asWorkbookError(error: unknown): WorkbookError {
  if (error instanceof WorkbookError) return error;
  return new WorkbookError('failed', 'The spreadsheet did not answer as expected.', { cause: error });
}

/** Whether something of the name is there and looks as we would have made it; else it is somebody else's. */
async function isOurs(each: Done, tried: readonly Done[], host: WriteHost): Promise<boolean> {
  if (each.action.kind === 'cells') return true;
  try {
    await refuseChangedSince([each], host, { all: tried });
    return true;
  } catch {
    return false;
  }
}

/** Taking back fails where there was nothing to take back: a table never made, cells never written. */
async function isAsBefore(action: Action, host: WriteHost): Promise<boolean> {
  const look = lookFor(action);
  if (!look) return false;
  try {
    const [seen] = await lookInSlices([look], host);
    if (action.kind === 'resize') return sameArea((seen as Table).area, action.area);
    if (action.kind === 'drop column') return !(seen as Table).headings.includes(action.heading);
    if (action.kind !== 'cells') return !seen;
    const { contents, formats } = seen as CellState;
    return action.contents.every((row, at) =>
      row.every(
        (content, column) =>
          (content === undefined || sameContent(content, contents[at]?.[column] ?? null)) &&
          (action.formats[at]?.[column] ?? formats[at]?.[column]) === formats[at]?.[column],
      ),
    );
  } catch {
    return false;
  }
}

function lookFor(action: Action): Look | undefined {
  switch (action.kind) {
    case 'cells':
      return { look: 'cells', area: action.area };
    case 'drop sheet':
      return { look: 'sheet', name: action.name };
    case 'drop table':
      return { look: 'is table', name: action.name };
    case 'drop name':
      return { look: 'name', name: action.name };
    case 'resize':
    case 'drop column':
      return { look: 'table', name: action.table };
    default:
      return undefined;
  }
}

function described(action: Action): string {
  switch (action.kind) {
    case 'cells':
      return `${cellAddress(action.area)} on sheet "${action.area.sheet}"`;
    case 'column':
    case 'resize':
    case 'drop column':
      return `the table "${action.table}"`;
    default:
      return `the ${action.kind.replace('drop ', '')} "${action.name}"`;
  }
}
