/** The kinds of quantity a working shows; each is held in the core's own unit. */
export type QuantityKind =
  | 'length'
  | 'area'
  | 'surface'
  | 'force'
  | 'stress'
  | 'mass'
  | 'massPerLength'
  | 'density'
  | 'angle'
  | 'ratio'
  | 'count'
  | 'seconds'
  | 'minutes'
  | 'speed'
  | 'money'
  | 'moneyPerMass'
  | 'text';

/** A value in a step: its symbol in the formula, what it is, and its size in the core's unit. */
export interface NamedValue {
  symbol: string;
  meaning: string;
  kind: QuantityKind;
  value: number | string;
}

/** One step of a calculation, as an engineer would write it down. */
export interface Step {
  title: string;
  /** The formula in the usual symbols: `F = p · t · τ`. */
  formula: string;
  values: NamedValue[];
  result: NamedValue;
  /** Standard and clause, "common practice", or "from memory". */
  source: string;
  cautions?: string[];
}

/**
 * Collects the steps of a calculation. Every calculation takes one as its last, optional argument and
 * reports with `working?.step({…})`: the argument of an optional call is not even built when nobody asks.
 */
export class Working {
  readonly steps: Step[] = [];

  step(step: Step): void {
    this.steps.push(step);
  }
}
