import { verdicts } from '../../core/check/verdict.js';

const words: ReadonlySet<unknown> = new Set(verdicts);

/** Whether a cell's value is the word of a row. */
export const isVerdict = (value: unknown): boolean => words.has(value);
