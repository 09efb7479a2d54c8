import type { Finding, FindingOf } from '../check/finding.js';
import type { Verdict } from '../check/verdict.js';
import type { PressChoice } from './checksOnPress.js';
import type { Piece } from './piece.js';
import type { Reading } from './job/reading.js';
import type { OtherRow } from './rowKind.js';
import type { RouteStep } from './route.js';

/** What is known of a checked row; data only, `core/say` makes the sentences. */
export interface CheckedRow {
  blank: false;
  verdict: Verdict;
  /** Share of the rating of the hardest operation; undefined where none could be computed. */
  use?: number;
  /** Force of the hardest operation, N. */
  forceN?: number;
  /** The finding that decides the verdict, or of a row that passes the hardest operation. */
  deciding?: Finding;
  /** The order of work; empty where the row could not be read. */
  route: readonly RouteStep[];
  /** Punch hits of the whole row: pieces × holes the press makes, none that are drilled; undefined where the row could not be read. */
  hits?: number;
  /** Mass of the whole row in kg; undefined where section, grade or length is missing. */
  massKg?: number;
  /** The piece between its cuts; undefined where section, grade or length is missing. */
  piece?: Piece;
  /** The press the result stands for; undefined where no press could be tried. */
  press?: string;
  /** How the press was chosen, where the row names none. */
  choice?: PressChoice;
  /** Everything that was checked, worst first. */
  findings: readonly Finding[];
  readings: readonly Reading[];
}

/** A row without a part that names work: it is not counted as a part, and has a word, since the work is checked nowhere. */
export interface StrayRow {
  blank: true;
  is: 'work';
  finding: FindingOf<'work without part'>;
}

/** `blank` for a row that is no part; what it is taken for where it holds something. */
export type RowResult = { blank: true; is?: Exclude<OtherRow, 'work'> } | StrayRow | CheckedRow;

/** The finding that decides a row which is not held; of one without a part, that it names work. */
export function worstFindingOf(result: RowResult): Finding | undefined {
  if (!result.blank) return result.findings[0];
  return result.is === 'work' ? result.finding : undefined;
}

/** The word of a row; undefined where nothing is to be checked. */
export function wordOf(result: RowResult): Verdict | undefined {
  if (!result.blank) return result.verdict;
  return result.is === 'work' ? result.finding.verdict : undefined;
}
