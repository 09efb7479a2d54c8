import type { Verdict } from '../../check/verdict.js';
import type { Grade } from '../../material/grade.js';
import type { Press } from '../../press/press.js';
import type { CellValue } from '../../quantity/cellValue.js';
import type { OtherRow } from '../../row/rowKind.js';
import type { AnySection } from '../../section/section.js';
import type { Turning } from '../stockProblem.js';

/*
 * What is to be cut of a parts list, as data: one job for each section and grade, as read. Lengths in mm, angles in rad.
 */

/** Why the ends of a part are not nested with others: a blank cell, how the section lies, or a width that few parts have. */
export type NotNested = 'Long side' | 'Miter leg' | 'how it lies' | 'both legs' | 'another width';

/** Like pieces of one row of the list. */
export interface JobPart {
  mark: string;
  /** The name of its list. */
  list: string;
  /** Of the list, without its headings, from 1. */
  row: number;
  pieces: number;
  /** Long point to long point. */
  longMm: number;
  /** What it takes along the middle of its width: its mass is that of this length. */
  middleMm: number;
  /** From square, as the row has them. */
  miterLeftRad: number;
  miterRightRad: number;
  /** As `StockPart` has them, heel or bottom edge at the fence; 0 at both ends where the part is not nested. */
  leanLeftRad: number;
  leanRightRad: number;
  /** Why its miters are planned as if its ends were square. */
  notNested?: NotNested;
  /** Of a row with pieces of both hands: the other hand than drawn. */
  isOtherHand?: true;
  verdict: Verdict;
  /** The press its row stands for. */
  press?: Press;
  /** What cuts it: a shear of the press, or a saw or torch. */
  isSheared: boolean;
}

/** What a cut takes, and where that comes from. */
export interface Kerf {
  mm: number;
  from: 'setting' | 'slug of the press' | 'single blade' | 'slug not known' | 'saw not known';
  /** The press whose slug it is, or whose slug is not known. */
  press?: string;
}

/** A length that bars come in. */
export interface JobStock {
  lengthMm: number;
  /** Of one bar. */
  price?: number;
  /** Bars that can be had; as many as needed where it is missing. */
  available?: number;
  /** The row of the Stock table, from 1; missing where the length is invented. */
  row?: number;
}

/** Where the lengths of the bars of a job come from. */
type StockOrigin = 'table' | 'common lengths';

/** Parts of one section and grade, and what they may be cut from. */
export interface StockJob {
  /** The same for sections and grades that are one, however they are written. */
  key: string;
  section: AnySection;
  grade: Grade;
  /** Longest first; rows of one length in the order of their marks. */
  parts: readonly JobPart[];
  turning: Turning;
  /** In the plane of the miters; 0 where no part is nested. */
  widthMm: number;
  kerf: Kerf;
  kgPerMm: number;
  /** Shortest first; empty where the Stock table has none and no common lengths are used. */
  stocks: readonly JobStock[];
  origin: StockOrigin;
  /** Sentences about rows of the Stock table for this section that cannot be read: the job is not planned until they can. */
  unreadable: readonly string[];
}

/** Why a row is not planned. */
export type LeftOut =
  | { is: 'plate' }
  | { is: 'no length' }
  | { is: 'bought' }
  | { is: 'asked'; kind: 'fails' | 'off press' | 'hidden' }
  /** The section or grade cannot be read; the sentence of the row. */
  | { is: 'not read'; sentence: string };

export interface LeftRow {
  mark: string;
  list: string;
  row: number;
  verdict: Verdict;
  why: LeftOut;
}

/** What is cut off and kept of each bar; a setting that is blank is 0, and told. */
export interface CuttingLosses {
  trimMm: number | undefined;
  gripMm: number | undefined;
  /** The shortest drop to keep; nothing is kept where it is blank. */
  keepMm: number | undefined;
}

/** A parts list as it stands in the sheet. */
export interface StockList {
  /** Told with its rows where there are several lists. */
  name: string;
  headings: readonly CellValue[];
  rows: readonly (readonly CellValue[])[];
  /** Rows of the sheet, from 1, that are hidden. */
  hidden?: ReadonlySet<number>;
  /** The row of the sheet, from 1, of its headings. */
  headingRow?: number;
}

/** A row of a list by its number on the sheet, from 1. */
export interface RowOnSheet {
  list: string;
  row: number;
}

/** The jobs of all lists together. */
export interface StockJobs {
  /** In the order of the section and grade names. */
  jobs: readonly StockJob[];
  left: readonly LeftRow[];
  /** Rows whose Qty is blank: one piece each. */
  onePiece: readonly string[];
  /** The names of the lists. */
  lists: readonly string[];
  /** Hidden rows that are planned. */
  hidden: readonly RowOnSheet[];
  /** Rows that are no parts, and what they are taken for. */
  others: readonly (RowOnSheet & { is: OtherRow })[];
  losses: CuttingLosses;
  /** Sentences about rows of the Stock table whose section cannot be read. */
  unreadable: readonly string[];
}

/** What is asked of a list. */
export interface StockJobOptions {
  /** Leaves out rows that fail on the press, such as Over capacity; they are planned otherwise. */
  withoutFailing?: boolean;
  /** Leaves out rows that are Off press, such as sawn channels; they are planned otherwise. */
  withoutOffPress?: boolean;
  /** Leaves out rows that are hidden on the sheet; they are planned otherwise. */
  withoutHidden?: boolean;
  /** Uses common lengths for sections that the Stock table does not have; invented. */
  commonLengths?: boolean;
}
