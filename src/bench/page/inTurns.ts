import type { Pausing } from '../../xlsx/pausing.js';

/** How long a piece of work holds the page before others have their turn. */
const turnMs = 40;

/** The user does not want to wait for the end. */
export class Stopped extends Error {}

export interface Turns {
  signal?: AbortSignal | undefined;
  /** Told now and then. */
  progress?: (() => void) | undefined;
  /** Waits while the user has stopped the work. */
  gate?: (() => Promise<void>) | undefined;
}

/** Does long work in turns with everything else that the page has to do. */
export async function inTurns<Result>(
  work: Pausing<Result>,
  { signal, progress, gate }: Turns = {},
): Promise<Result> {
  for (;;) {
    const until = performance.now() + turnMs;
    do {
      const step = work.next();
      if (step.done) return step.value;
    } while (performance.now() < until);
    progress?.();
    await nextTask();
    await gate?.();
    if (signal?.aborted) throw new Stopped();
  }
}

export const nextTask = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));
