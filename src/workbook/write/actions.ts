import type { Step } from '../step.js';
import type { Planned } from '../writeHost.js';
import { kindOf } from './kinds/kinds.js';
import { WidenedTables } from './kinds/widenedTables.js';

/** The actions that steps come to, given what was seen for each. Refuses what the host would refuse halfway. */
export function actionsFor(steps: readonly Step[], seen: readonly unknown[]): Planned[] {
  const tables = new WidenedTables();
  const actions = steps.map((step, at) => kindOf(step).plan(step, seen[at], tables));
  const firstColumn = steps.findIndex(({ kind }) => kind === 'column');
  const placed = actions.map((action, at) => {
    if (action.kind === 'unmerge') return tables.withSpan(action);
    return action.kind === 'cells' ? tables.withPlace(action, { beforeColumns: at < firstColumn }) : action;
  });
  return [...placed, ...tables.bodies()];
}
