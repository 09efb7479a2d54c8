import type { Planned, WriteHost } from '../writeHost.js';
import { kindOf } from './kinds/kinds.js';
import { lookInSlices } from './lookInSlices.js';

/**
 * Refuses where cells no longer hold what the plan has shown, tables are not where they were, or names have
 * been taken: one round trip, more for large areas.
 */
export async function refuseChangedSincePlan(actions: readonly Planned[], host: WriteHost): Promise<void> {
  const looked = actions.filter((action) => !isMade(action));
  const answers = await lookInSlices(
    looked.map((action) => kindOf(action).look(action)),
    host,
  );
  looked.forEach((action, at) => kindOf(action).refuseChanged(action, answers[at]));
}

/** What the plan itself makes was not there to be changed. */
function isMade(action: Planned): boolean {
  if (action.kind === 'cells') return action.fresh;
  return action.kind === 'column' && action.seen === undefined;
}
