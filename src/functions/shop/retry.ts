/** What an attempt came to: done, or worth another attempt. */
export type Attempt = 'done' | 'again';

const firstPauseMs = 250;
const longestPauseMs = 2000;

/** Makes attempts, further and further apart, until one is done or the time is over. */
export async function retried(attempt: () => Promise<Attempt>, limitMs: number): Promise<void> {
  let left = limitMs;
  let pause = firstPauseMs;
  while ((await attempt()) === 'again' && left > 0) {
    const next = Math.min(pause, left);
    await new Promise((resolve) => setTimeout(resolve, next));
    left -= next;
    pause = Math.min(2 * pause, longestPauseMs);
  }
}

/** A host without `delayForCellEdit` refuses every request while a cell is edited. */
export function isEditing(error: unknown): boolean {
  const { code } = (error ?? {}) as { code?: unknown };
  return code === 'InvalidOperationInCellEditMode';
}
