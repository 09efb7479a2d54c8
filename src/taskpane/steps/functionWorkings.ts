import type { CellValue } from '../../core/quantity/cellValue.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Step } from '../../core/working/working.js';

/** The steps of a call, and the unit of the shop it named. */
export interface WorkedCall {
  steps: readonly Step[];
  unit: LengthUnit;
}

/** What a function is for, and its arguments as users see them. */
export interface FunctionHelp {
  purpose: string;
  arguments: readonly { label: string; omitted?: string }[];
}

/**
 * What the functions offer a pane that lives in the same runtime: the working of a call, from the code that computes
 * it. They put it on the global object as `tonrowWorkings`.
 */
export interface FunctionWorkings {
  /**
   * Arguments left out are null. Throws an error with one sentence where the call is refused; what takes long comes
   * later, or is refused later.
   */
  workingOf(name: string, inputs: readonly (CellValue[][] | null)[]): WorkedCall | Promise<WorkedCall>;
  /** Undefined for a name that is no function. */
  helpOf(name: string): FunctionHelp | undefined;
}

export function functionWorkings(): FunctionWorkings | undefined {
  return (globalThis as { tonrowWorkings?: FunctionWorkings }).tonrowWorkings;
}
