import { type Failure, InputError } from '../../src/core/inputError.js';

/** What a call refuses, as data. Anything else than a refusal, a result included, is an error of the test. */
export function refusal(call: () => unknown): Failure {
  let result: unknown;
  try {
    result = call();
  } catch (error) {
    if (error instanceof InputError) return error.failure;
    throw error;
  }
  throw new Error(`Nothing was refused: ${JSON.stringify(result)}`);
}

/** The sentence a user reads. */
export function refusalText(call: () => unknown): string {
  const { argument, problem, allowed } = refusal(call);
  return `${argument}: ${problem} ${allowed}`.trim();
}
