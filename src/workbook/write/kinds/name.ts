import { type Area, readAddresses, sameArea } from '../../area.js';
import type { DefinedName } from '../../reading.js';
import { refuseAdded, refuseTaken, refuseWorkedOn } from './refusals.js';
import { checkName } from './shape.js';
import type { ActionKind } from './kind.js';

/** Names cells for the whole workbook. */
export const name: ActionKind<'name'> = {
  refuseShape: (step) => checkName(step.name),
  look: (it) => ({ look: 'name', name: it.name }),
  plan(step, seen) {
    if (seen) refuseTaken('a name', step.name);
    return step;
  },
  refuseChanged(action, seen) {
    if (seen) refuseAdded(action.name);
  },
  undo: (action) => ({ kind: 'drop name', name: action.name }),
  lookDone: (action) => ({ look: 'name', name: action.name }),
  refuseWorkedOn(action, _after, seen) {
    const refersTo = (seen as DefinedName | undefined)?.refersTo ?? '';
    if (!refersToArea(refersTo, action.area)) refuseWorkedOn(`The name "${action.name}"`);
  },
  isUndone: (_action, seen) => !seen,
  described: (action) => `the name "${action.name}"`,
};

/** Hosts write the same reference with or without quotes. */
function refersToArea(formula: string, area: Area): boolean {
  try {
    const [only, ...more] = readAddresses(formula.replace(/^=/, ''), area.sheet);
    return only !== undefined && more.length === 0 && sameArea(only, area);
  } catch {
    return false;
  }
}
