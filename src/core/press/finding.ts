/** The words a row can show, worst first: one word per row, in this precedence. */
export const verdicts = [
  'Check input',
  'No press',
  'No station',
  'Too big',
  "Can't reach",
  'Hole too small',
  'Holes too close',
  'Edge short',
  'Over capacity',
  'No tool',
  'Not checked',
  'Near limit',
  'OK',
] as const;

export type Verdict = (typeof verdicts)[number];

/** What one check found. */
export interface Finding {
  verdict: Verdict;
  /** What was held against what, in a few words: `punch force`, `end distance`. */
  governs: string;
  /** One sentence; empty for a check that passed. */
  note: string;
  /** Share of the rating, 1 is full. */
  use?: number;
  /** The force behind that share, in N. */
  forceN?: number;
  /** The holes of the row it is about: `Hole`, `Hole 2`. */
  holeGroup?: string;
  /** The station that the press lacks, or of which it is not known whether the press has it. */
  station?: string;
  /** Of a cell of the press that cannot be read: what the press would make of the work is not known. */
  ofPressCell?: true;
}

/** The finding with the largest share of a rating; undefined where none has one. */
export function hardestOf(findings: readonly Finding[]): (Finding & { use: number }) | undefined {
  const shares = findings.filter(
    (finding): finding is Finding & { use: number } => finding.use !== undefined,
  );
  return shares.reduce<(typeof shares)[number] | undefined>(
    (most, each) => (most === undefined || each.use > most.use ? each : most),
    undefined,
  );
}

/** Orders findings worst first; among equals the larger share first. */
export function bySeverity(a: Finding, b: Finding): number {
  return verdicts.indexOf(a.verdict) - verdicts.indexOf(b.verdict) || (b.use ?? 0) - (a.use ?? 0);
}
