/**
 * Long work that may rest where it yields. A page does it in turns with everything else; whoever has nothing else to do
 * takes it at once. The result is the same.
 */
export type Pausing<Result> = Generator<undefined, Result, undefined>;

/** Does the work without a rest. */
export function atOnce<Result>(work: Pausing<Result>): Result {
  let step = work.next();
  while (!step.done) step = work.next();
  return step.value;
}

/** Entries of a long list between two rests: about a millisecond. */
export const entriesInTurn = 500;

/** Bytes that are gone through between two rests: some milliseconds. */
export const bytesInTurn = 1024 * 1024;
