import type { Random } from './random.js';

/** One kind of call: makes an input of random numbers, tries it, and says what is wrong; undefined when all is well. */
export interface FuzzKind {
  name: string;
  /** `keep` is given the input before it is tried, so that it is known whatever comes. */
  call: (random: Random, keep: (input: unknown) => void) => Promise<string | undefined>;
}

/** Says what went wrong with an error that nothing may throw. */
export const thrown = (error: unknown): string =>
  error instanceof Error ? `throws ${error.name}: ${error.message.slice(0, 200)}` : `throws ${String(error)}`;
