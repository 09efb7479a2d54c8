import { WorkbookError } from '../workbookError.js';
import type { Done, Planned, WriteHost } from '../writeHost.js';
import { kindOf } from './kinds/kinds.js';
import { lookInSlices } from './lookInSlices.js';
import { refuseChangedSince } from './refuseChangedSince.js';
import { undoing } from './undo.js';

/**
 * After a failure: takes back what was done, and whatever the failed message did before it failed, one by
 * one, then looks whether everything is as it was. Gives the error to throw.
 */
export async function takeBack(
  error: unknown,
  done: readonly Done[],
  failed: readonly Planned[],
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
      if (!(await isUndone(each, host)))
        left.push(`${kindOf(each.action).described(each.action)} (${asWorkbookError(failure).message})`);
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
    if (undoing([each]).length > 0 && !(await isUndone(each, host))) left.push(each);
  }
  // Cells go back where they stood when the columns before them have gone.
  const moved = left.some(({ action: { kind } }) => kind === 'column')
    ? done.filter(({ action }) => 'standsAt' in action && action.standsAt !== undefined)
    : [];
  // Cells that came with a sheet or column are looked at as long as that is there.
  const comeAlong = left.some(({ action: { kind } }) => kind === 'sheet' || kind === 'column');
  return done.filter(
    (each) => left.includes(each) || moved.includes(each) || (comeAlong && undoing([each]).length === 0),
  );
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
async function isUndone({ action }: Done, host: WriteHost): Promise<boolean> {
  const kind = kindOf(action);
  try {
    const [seen] = await lookInSlices([kind.look(action)], host);
    return kind.isUndone(action, seen);
  } catch (error) {
    // A column has gone with its table.
    return action.kind === 'column' && error instanceof WorkbookError && error.trouble === 'missing';
  }
}
