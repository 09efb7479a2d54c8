import { cellAddress, sameArea } from '../area.js';
import { sameContent } from '../content.js';
import type { Table } from '../reading.js';
import { WorkbookError } from '../workbookError.js';
import type { Action, CellState, Look, WriteHost } from './host.js';
import { type Done, undoing } from './undo.js';

/**
 * After a failure: takes back what was done, and whatever the failed message did before it failed, one by
 * one, then looks whether everything is as it was. Gives the error to throw.
 */
export async function putBack(
  error: unknown,
  done: readonly Done[],
  failed: readonly Action[],
  host: WriteHost,
): Promise<WorkbookError> {
  const cause = asWorkbookError(error);
  const tried: Done[] = [...done, ...failed.map((action) => ({ action, after: undefined }))];
  const left: string[] = [];
  for (const action of undoing(tried)) {
    try {
      await host.act([action]);
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

function asWorkbookError(error: unknown): WorkbookError {
  if (error instanceof WorkbookError) return error;
  return new WorkbookError('failed', 'The spreadsheet did not answer as expected.', { cause: error });
}

/** Taking back fails where there was nothing to take back: a table never made, cells never written. */
async function isAsBefore(action: Action, host: WriteHost): Promise<boolean> {
  const look = lookFor(action);
  if (!look) return false;
  try {
    const [seen] = await host.look([look]);
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
