import type { Area } from './area.js';
import type { Content, Contents } from './content.js';
import type { LongWork } from './longWork.js';
import type { Sheet } from './reading.js';

/** One thing to do to a workbook. The steps of a plan are done in their order, together. */
export type Step =
  /** Writes contents, number formats, or both; undefined leaves a cell as it is. */
  | {
      kind: 'cells';
      area: Area;
      contents?: Contents;
      formats?: readonly (readonly (string | undefined)[])[];
      /** How wide its columns become, in characters. Widths are not taken back. */
      widths?: readonly (number | undefined)[];
    }
  | { kind: 'sheet'; name: string }
  /**
   * Makes cells a table; the first row of the area has the headings. `headings`: what that row then holds, so that
   * the same plan can add columns. `keepsLook`: its cells have a look of their own, which the table leaves as it is.
   */
  | { kind: 'table'; name: string; area: Area; headings?: readonly string[]; keepsLook?: true }
  /** Adds a column beside another, or at the right end; the cells below the heading follow. */
  | {
      kind: 'column';
      table: string;
      rightOf?: string;
      /** Goes before `rightOf`. */
      leftOf?: string;
      heading: string;
      contents: readonly Content[];
      format?: string;
      /** In characters. */
      width?: number;
    }
  /** Lets a table span other rows and columns; its headings stay in their row. */
  | { kind: 'resize'; table: string; area: Area }
  /** Takes merged cells apart; what they hold stays in the first of them. */
  | { kind: 'unmerge'; area: Area }
  /** Names cells for the whole workbook. */
  | { kind: 'name'; name: string; area: Area };

export type CellsStep = Extract<Step, { kind: 'cells' }>;

/** A cell that holds something and would hold something else. */
export interface Overwrite {
  cell: Area;
  holds: Content;
  becomes: Content;
  /** Its number format now: a number may show as a date. */
  format: string;
}

/** What steps would do, for the user to say yes or no to. */
export interface WritePlan {
  readonly steps: readonly Step[];
  readonly overwrites: readonly Overwrite[];
  /** Cells whose number format alone would change. */
  readonly formatted: number;
  /** Cells to be written, blank ones included. */
  readonly cells: number;
  /** Sheets that are protected: writing may be refused there. */
  readonly protectedSheets: readonly Sheet[];
}

export interface WriteOptions extends LongWork {
  /** The user has seen what the plan overwrites, and said yes. */
  confirmed?: boolean;
}

/** Takes a write back. */
export interface Revert {
  /** The plan that was written. */
  readonly plan: WritePlan;
  /** Restores contents and number formats exactly. Refuses where somebody changed the cells since. Works once. */
  run(work?: LongWork): Promise<void>;
}
