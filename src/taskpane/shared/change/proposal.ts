import type { Step, WritePlan } from '../../../workbook/step.js';

/** A change of the workbook that the user is asked about before anything is written. */
export interface Proposal {
  /** What is to be done, as a heading: `Add shop sheet`. */
  title: string;
  /** What the user should know before saying yes. */
  remarks?: readonly string[];
  steps: readonly Step[];
  /** Called once it is written. */
  written?: () => void;
}

/** A change that must look at the workbook before it can say what it writes, or in one sentence why it cannot. */
export interface Making {
  title: string;
  make: () => Promise<Proposal | string>;
}

/** A proposal with what writing it would change. */
export interface Previewed {
  proposal: Proposal;
  plan: WritePlan;
}
