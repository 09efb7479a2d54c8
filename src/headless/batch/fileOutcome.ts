/** A verdict that is not what the file held, with the mark of its row. */
export interface VerdictChange {
  /** `Quote!K12`. */
  cell: string;
  mark: string;
  was: string;
  now: string;
}

/** The verdicts of a file against those it held. */
export interface VerdictNews {
  changed: VerdictChange[];
  /** Verdicts of cells that held none before. */
  first: number;
}

/** One file of a batch, for whoever works on it. */
export interface FileJob {
  /** As typed, or found in a typed folder. */
  source: string;
  target: string;
  /** Do it again although there is a result. */
  again: boolean;
}

/** What a file's recalculation found. */
export interface FileResult {
  verdicts: VerdictNews;
  calculated: number;
  changed: number;
  pinned: number;
  stale: number;
  errors: number;
}

/** What became of one file of a batch. */
export type FileOutcome = { in: string } & (
  | { state: 'refused'; error: string }
  | ({ state: 'done'; out: string } & FileResult)
  | { state: 'done before'; out: string; verdicts: VerdictNews; stale: number }
);
