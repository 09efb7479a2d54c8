import type { Finding, Verdict } from '../press/finding.js';

/** What is known of a checked row; `blank` for empty and subtotal rows, which stay blank in every item. */
export type RowResult =
  | { blank: true }
  | {
      blank: false;
      verdict: Verdict;
      /** Share of the rating of the hardest operation; undefined where none could be computed. */
      use?: number;
      governs: string;
      note: string;
      /** Force of the hardest operation, N. */
      forceN?: number;
      /** The order of work: `shear, punch`; empty where the row could not be read. */
      route: string;
      /** Punch hits of the whole row: pieces × holes the press makes, none that are drilled; undefined where the row could not be read. */
      hits?: number;
      /** Mass of the whole row in kg; undefined where section, grade or length is missing. */
      massKg?: number;
      /** The press the result stands for; undefined where no press could be tried. */
      press?: string;
      findings: readonly Finding[];
    };
