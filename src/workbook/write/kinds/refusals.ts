import { type Area, cellAddress } from '../../area.js';
import { WorkbookError } from '../../workbookError.js';

export const where = (cell: Area) => `${cellAddress(cell)} on sheet "${cell.sheet}"`;

/** Refuses to write what is no longer as the plan has shown it. */
export function refuseChanged(what: string): never {
  throw new WorkbookError('changed', `${what} was changed meanwhile: look again before you write.`);
}

/** Refuses to write what somebody else has made since the plan. */
export function refuseAdded(name: string): never {
  throw new WorkbookError('exists', `Somebody has added "${name}" meanwhile: look again.`);
}

/** Refuses to plan what is there already. */
export function refuseTaken(what: string, name: string): never {
  throw new WorkbookError('exists', `There is ${what} "${name}" already: choose another name.`);
}

/** Refuses to undo what somebody has worked on since. */
export function refuseWorkedOn(what: string): never {
  throw new WorkbookError(
    'changed',
    `${what} has changed since this was written, so this was not undone. Undo the later change first, or keep both.`,
  );
}
