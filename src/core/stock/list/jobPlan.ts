import type { Shortage, StockPlan } from '../stockPlan.js';
import type { JobPart, JobStock, StockJob, StockJobs } from './stockJob.js';

/*
 * What becomes of the plan of a job: what to buy, what to cut in which order, what is left. Lengths in mm, angles in rad,
 * masses in kg, money as the prices are.
 */

/** What is to be bought of a section in one length. */
export interface Purchase {
  stock: JobStock;
  bars: number;
  massKg: number;
  /** Of all these bars; missing where no price is given. */
  cost?: number;
}

/** What is pushed to the stop of the back gauge for a piece, in the order that the plan cuts it. */
export type GaugePush =
  | { mm: number; reach: 'within' | 'over' | 'unknown' }
  | { open: 'Long side' | 'Miter leg' | 'how it lies' | 'Angle shear slug' }
  /** No shear cuts it. */
  | { none: true };

export interface CutPiece {
  /** The letter of the part in its job: A is the longest. */
  letter: string;
  part: JobPart;
  startMm: number;
  endMm: number;
  /** From the front end of the bar to the far side of its cut, or to the end of the bar. */
  runMm: number;
  /** As it lies in the bar; 0 where the part is not nested. */
  leanLeftRad: number;
  leanRightRad: number;
  isTurnedOver: boolean;
  isTurnedRound: boolean;
  push: GaugePush;
}

/** Bars that are cut alike. */
export interface CutBar {
  /** Of the job, from 1, in shop order. */
  pattern: number;
  stock: JobStock;
  bars: number;
  pieces: readonly CutPiece[];
  /** From the last cut to the end of the bar, the grip with it. */
  restMm: number;
  isKept: boolean;
}

/** Material cost and mass of the pieces of one row, as a share of what its job buys. */
export interface MarkShare {
  part: JobPart;
  /** Pieces that the plan cuts. */
  pieces: number;
  /** Of the length of its job's parts, along the middle. */
  share: number;
  boughtKg: number;
  cost?: number;
}

export interface JobShortage {
  part: JobPart;
  pieces: number;
  why: Shortage['why'];
}

export interface JobMass {
  /** Of the parts that are cut. */
  netKg: number;
  boughtKg: number;
  dropsKg: number;
  /** What is neither a part nor a drop to keep. */
  scrapKg: number;
}

/** A job with its plan. */
export interface PlannedJob {
  job: StockJob;
  plan: StockPlan;
  purchases: readonly Purchase[];
  bars: readonly CutBar[];
  shortages: readonly JobShortage[];
  shares: readonly MarkShare[];
  mass: JobMass;
  /** Of all its bars; missing where one of the lengths that are bought has no price. */
  cost?: number;
  /** Where the price comes from. */
  priced: 'Stock' | 'Material price' | 'none';
}

/** A job without a plan: it has no stock lengths, or a row of its stock cannot be read. */
export interface UnplannedJob {
  job: StockJob;
  why: 'no stock' | 'unreadable stock';
}

/** The plan of a list. */
export interface ListPlan extends Omit<StockJobs, 'jobs'> {
  unit: 'in' | 'mm';
  currency: string;
  /** The stamp of the shop. */
  stamp: string;
  planned: readonly PlannedJob[];
  unplanned: readonly UnplannedJob[];
}
