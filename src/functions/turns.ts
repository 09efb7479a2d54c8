import { CallCanceled } from './cancellation.js';
import type { Later } from './descriptor/descriptor.js';

/** Rows of a list that a call answers for at once; more of them are worked out in turns with everything else. */
export const rowsAtOnce = 200;
/** Rows that are worked out in one turn: some milliseconds, 50 at most on a slow machine. */
const rowsInTurn = 25;

/** How long work shares the runtime with the pane and the host. */
export interface Turns {
  /** Lets others have their turn; undefined where nobody waits for one. */
  giveWay?: (() => Promise<void>) | undefined;
  /** Tells that nobody wants the result any more. */
  signal?: AbortSignal | undefined;
}

/** Makes something of each row: at once of a short list, in turns of a long one. */
export function eachRow<Row, Made>(
  rows: readonly Row[],
  make: (row: Row) => Made,
  { giveWay, signal }: Turns,
): Later<Made[]> {
  if (!giveWay || rows.length <= rowsAtOnce) return rows.map((row) => make(row));
  return inTurns(rows, make, { giveWay, signal });
}

async function inTurns<Row, Made>(
  rows: readonly Row[],
  make: (row: Row) => Made,
  { giveWay, signal }: Turns & { giveWay: () => Promise<void> },
): Promise<Made[]> {
  const made: Made[] = [];
  while (made.length < rows.length) {
    // The host that asked goes on first.
    await giveWay();
    if (signal?.aborted) throw new CallCanceled();
    // The first rows take tens of times as long, until the engine has compiled what they call: each turn doubles them.
    const from = made.length;
    const to = from + Math.min(rowsInTurn, from + 1);
    for (const row of rows.slice(from, to)) made.push(make(row));
  }
  return made;
}
