import { WorkbookError } from './workbookError.js';

/** How work that takes several round trips reports and is stopped. */
export interface LongWork {
  /** Told after every round trip, in cells. */
  progress?: ((done: number, total: number) => void) | undefined;
  /** Checked between round trips. */
  signal?: AbortSignal | undefined;
}

export function refuseWhenCanceled({ signal }: LongWork, sentence: string): void {
  if (signal?.aborted) throw new WorkbookError('canceled', sentence);
}
