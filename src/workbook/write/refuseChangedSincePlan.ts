import { sameArea } from '../area.js';
import type { Table } from '../reading.js';
import { WorkbookError } from '../workbookError.js';
import type { Action, CellState, Look, WriteHost } from './host.js';
import { lookInSlices } from './lookInSlices.js';
import { refuseChanged, refuseOther } from './refuseChangedSince.js';

/**
 * Refuses where cells no longer hold what the plan has shown, tables are not where they were, or names have
 * been taken: one round trip, more for large areas.
 */
export async function refuseChangedSincePlan(actions: readonly Action[], host: WriteHost): Promise<void> {
  const looks = actions.map(lookFor);
  const answers = await lookInSlices(
    looks.flatMap((look) => look ?? []),
    host,
  );
  actions.forEach((action, at) => {
    if (looks[at]) refuseDifferent(action, answers.shift());
  });
}

function lookFor(action: Action): Look | undefined {
  switch (action.kind) {
    case 'cells':
      return action.fresh ? undefined : { look: 'cells', area: action.area };
    case 'sheet':
      return { look: 'sheet', name: action.name };
    case 'table':
      return { look: 'is table', name: action.name };
    case 'name':
      return { look: 'name', name: action.name };
    case 'column':
    case 'resize':
      return { look: 'table', name: action.table };
    default:
      return undefined;
  }
}

function refuseDifferent(action: Action, seen: unknown): void {
  switch (action.kind) {
    case 'cells':
      return refuseOther(action, [action.before], seen as CellState);
    case 'sheet':
    case 'table':
    case 'name':
      if (seen)
        throw new WorkbookError('exists', `Somebody has added "${action.name}" meanwhile: look again.`);
      return;
    case 'resize':
      if (!sameArea((seen as Table).area, action.was)) refuseChanged(`The table "${action.table}"`);
      return;
    case 'column': {
      const { area, headings } = seen as Table;
      const same =
        sameArea(area, action.seen.area) && headings.join('\n') === action.seen.headings.join('\n');
      if (!same) refuseChanged(`The table "${action.table}"`);
    }
  }
}
