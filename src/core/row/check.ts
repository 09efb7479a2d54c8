import { type Finding, refusal } from '../check/finding.js';
import { InputError } from '../inputError.js';
import { type Step, Working } from '../working/working.js';

/** One check of a row: what it found, and its steps where they were asked for. */
export interface Check {
  findings: readonly Finding[];
  steps: readonly Step[];
}

/** Runs a check; what it refuses, such as a setting that cannot be read, becomes a finding of the row. */
export function check(asked: boolean, about: string, run: (working?: Working) => readonly Finding[]): Check {
  const working = asked ? new Working() : undefined;
  return { findings: found(about, () => run(working)), steps: working?.steps ?? [] };
}

function found(about: string, run: () => readonly Finding[]): readonly Finding[] {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return [refusal(error.failure, about)];
  }
}
