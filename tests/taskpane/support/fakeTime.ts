import { vi } from 'vitest';

/** Timers are faked in the tests of the pane; the turns in which a page draws and answers are real. */
export function fakeTime(): void {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
}

/** Lets milliseconds of faked time pass, with turns of the page between them. */
export async function letPass(ms: number): Promise<void> {
  for (let passed = 0; passed < ms; passed += 10) {
    await vi.advanceTimersByTimeAsync(10);
    await new Promise((resolve) => setImmediate(resolve));
  }
}
