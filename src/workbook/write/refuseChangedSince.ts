import type { Done, WriteHost } from '../writeHost.js';
import type { Since } from './kinds/kind.js';
import { kindOf } from './kinds/kinds.js';
import { lookInSlices } from './lookInSlices.js';

/** Refuses to take back what somebody has worked on since: one round trip, more for large areas. */
export async function refuseChangedSince(
  done: readonly Done[],
  host: WriteHost,
  { all = done, orAsBefore = false }: Partial<Since> = {},
): Promise<void> {
  const answers = await lookInSlices(
    done.map(({ action }) => kindOf(action).lookDone(action)),
    host,
  );
  done.forEach(({ action, after }, at) =>
    kindOf(action).refuseWorkedOn(action, after, answers[at], { all, orAsBefore }),
  );
}
